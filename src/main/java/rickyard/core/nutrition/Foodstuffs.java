package rickyard.core.nutrition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Lot;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Makes foodstuffs from lots with their analyses and from feeds with their labels.
 *
 * <p>What was not reported takes the typical value of the material where the tables have one,
 * marked as assumed; sugars and starch never do.
 */
public final class Foodstuffs {
  private static final String LONG_STEM = "long-stem";

  private final FeedingStandards standards;

  public Foodstuffs(FeedingStandards standards) {
    this.standards = standards;
  }

  /**
   * A lot with its analysis in force.
   *
   * @return empty if neither the report nor the tables know its dry matter
   */
  public Optional<Foodstuff> ofLot(Lot lot, Analysis analysis) {
    return ofLot(lot, analysis.dryMatter(), analysis.contents());
  }

  /**
   * A lot without any analysis: typical values only, and no sugar value at all.
   *
   * @return empty if the tables do not know the dry matter of its material
   */
  public Optional<Foodstuff> ofUnanalysedLot(Lot lot) {
    return ofLot(lot, Optional.empty(), Map.of());
  }

  private Optional<Foodstuff> ofLot(
      Lot lot, Optional<Measured> reported, Map<AnalyteCode, Measured> given) {
    FeedRole role = role(lot.material(), true);
    return reported
        .or(() -> typicalDryMatter(lot.material()))
        .map(
            dryMatter ->
                new Foodstuff(
                    lot.id(),
                    "",
                    lot.id(),
                    lot.material(),
                    LONG_STEM,
                    role.isForage(),
                    role.isStraw(),
                    dryMatter,
                    new TreeMap<>(complete(role, given))));
  }

  /** A feed with the values of its label and of its batch. */
  public Foodstuff ofFeed(Feed feed) {
    return ofFeed(feed, feed.dryMatterPercent(), feed.contents());
  }

  /**
   * A feed with a certificate of its batch: what was reported takes the place of the label's value;
   * a certificate with any sugar or starch replaces all of the label's.
   */
  public Foodstuff ofFeed(Feed feed, Analysis certificate) {
    Map<AnalyteCode, Measured> contents = new TreeMap<>(feed.contents());
    if (certificate.contents().keySet().stream().anyMatch(Sugars.CODES::contains)) {
      contents.keySet().removeIf(Sugars.CODES::contains);
    }
    contents.putAll(certificate.contents());
    return ofFeed(feed, certificate.dryMatter().orElse(feed.dryMatterPercent()), contents);
  }

  private Foodstuff ofFeed(Feed feed, Measured dryMatter, Map<AnalyteCode, Measured> given) {
    FeedRole role = role(feed.role(), false);
    return new Foodstuff(
        feed.id(),
        feed.batch(),
        feed.name(),
        feed.role(),
        feed.form(),
        role.isForage(),
        role.isStraw(),
        dryMatter,
        new TreeMap<>(complete(role, given)));
  }

  /** A role that the tables do not know: a lot is forage, a feed is not, silence says nothing. */
  private FeedRole role(String name, boolean isLot) {
    Source none = new Source("roles.csv", 0, "assumed", "role not in the table", Standing.ASSUMED);
    return standards.findRole(name).orElseGet(() -> new FeedRole(name, isLot, false, false, none));
  }

  private Map<AnalyteCode, Measured> complete(FeedRole role, Map<AnalyteCode, Measured> given) {
    Map<AnalyteCode, Measured> contents = new TreeMap<>(given);
    Sugars.addSums(contents, standards.settings().number("nsc_correlation"));
    if (role.isForage()) {
      ForageEnergy.add(role.role(), contents, standards);
    }
    if (role.silenceIsZero()) {
      addZeros(role, contents);
    }
    addTypical(role, contents);
    return contents;
  }

  private void addZeros(FeedRole role, Map<AnalyteCode, Measured> contents) {
    Evidence silence =
        role.source().standing() == Standing.VERIFIED
            ? new Evidence.Derived("none by definition, " + role.source().words(), List.of())
            : new Evidence.Assumed(role.source().table(), role.role() + ": not declared");
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed()) {
        contents.putIfAbsent(
            nutrient.analyte(),
            Measured.of(nutrient.contentUnit(), Basis.DRY_MATTER, 0, 0, 0, silence));
      }
    }
  }

  private void addTypical(FeedRole role, Map<AnalyteCode, Measured> contents) {
    for (TypicalValue typical : standards.typicalValues()) {
      if (!typical.material().equals(role.role())
          || typical.ofProtein()
          || typical.analyte().equals(AnalyteCode.DM)) {
        continue;
      }
      Unit unit =
          Nutrient.findByCode(typical.analyte().value())
              .map(Nutrient::contentUnit)
              .orElse(Unit.PERCENT);
      contents.putIfAbsent(typical.analyte(), measured(typical, unit, typical.mean(), typical.u()));
    }
    standards
        .findTypical(role.role(), AnalyteCode.LYS)
        .filter(TypicalValue::ofProtein)
        .ifPresent(t -> addLysine(t, contents));
  }

  /** Lysine as a share of the item's own protein, with the uncertainty of both. */
  private static void addLysine(TypicalValue share, Map<AnalyteCode, Measured> contents) {
    Measured protein = contents.get(AnalyteCode.CP);
    if (protein == null || contents.containsKey(AnalyteCode.LYS)) {
      return;
    }
    double best = protein.best() * share.mean() / 100;
    double u = StrictMath.hypot(protein.u() * share.mean() / 100, protein.best() * share.u() / 100);
    contents.put(AnalyteCode.LYS, measured(share, Unit.PERCENT, best, u));
  }

  private static Measured measured(TypicalValue typical, Unit unit, double best, double u) {
    return Measured.of(
        unit,
        Basis.DRY_MATTER,
        best,
        0,
        u,
        new Evidence.Assumed(
            typical.source().table(), typical.material() + " " + typical.analyte()));
  }

  private Optional<Measured> typicalDryMatter(String material) {
    return standards
        .findTypical(material, AnalyteCode.DM)
        .map(
            t ->
                Measured.of(
                    Unit.PERCENT,
                    Basis.AS_FED,
                    t.mean(),
                    0,
                    t.u(),
                    new Evidence.Assumed(t.source().table(), material + " DM")));
  }
}
