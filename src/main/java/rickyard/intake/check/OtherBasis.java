package rickyard.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;

/**
 * One column of figures that fit together on the other basis than the page says: NFC by difference
 * comes out with the dry matter where 100 is due, or the other way round; RFV comes out once the
 * fibres are set over the dry matter. Then the word over the column is wrong, for every line.
 */
final class OtherBasis {
  static final String CODE = "basis-unlike-figures";
  private static final double NFC_MARGIN = 1;

  private OtherBasis() {}

  static Checked of(Figures figures) {
    List<Check> checks = new ArrayList<>();
    SortedMap<AnalyteCode, String> touched = new TreeMap<>();
    Optional<Span> dry = figures.dryMatter();
    if (dry.isPresent() && figures.asFed().isEmpty()) {
      List<AnalyteCode> contents = contents(figures);
      nonFibre(figures, dry.get()).ifPresent(ok -> note(checks, "NFC", ok, contents));
      feedValue(figures, dry.get()).ifPresent(ok -> note(checks, "RFV", ok, contents));
      if (checks.stream().anyMatch(c -> !c.holds())) {
        contents.forEach(c -> touched.put(c, CODE));
      }
    }
    return new Checked(checks, touched);
  }

  private static void note(List<Check> into, String by, boolean holds, List<AnalyteCode> contents) {
    into.add(
        new Check(
            "basis as said, by " + by,
            Check.Kind.EXACT,
            holds,
            contents,
            holds ? "the figures fit the basis" : "the figures fit the other basis only"));
  }

  private static List<AnalyteCode> contents(Figures figures) {
    return figures.values().entrySet().stream()
        .filter(e -> !Figures.isWater(e.getKey()) && e.getValue().basis() != Basis.NONE)
        .map(java.util.Map.Entry::getKey)
        .toList();
  }

  /** Whether NFC speaks for the basis said; empty where it speaks for neither or both. */
  private static Optional<Boolean> nonFibre(Figures figures, Span dry) {
    List<Span> s = new ArrayList<>();
    for (AnalyteCode code :
        List.of(
            AnalyteCode.CP, AnalyteCode.NDF, AnalyteCode.EE, AnalyteCode.ASH, AnalyteCode.NFC)) {
      figures.span(code).ifPresent(s::add);
    }
    if (s.size() < 5) {
      return Optional.empty();
    }
    boolean onDry =
        Identities.nonFibre(Span.exactly(100), s.get(0), s.get(1), s.get(2), s.get(3))
            .widened(NFC_MARGIN)
            .meets(s.get(4));
    boolean asFed =
        Identities.nonFibre(dry, s.get(0), s.get(1), s.get(2), s.get(3))
            .widened(NFC_MARGIN)
            .meets(s.get(4));
    return speaks(figures, onDry, asFed);
  }

  private static Optional<Boolean> feedValue(Figures figures, Span dry) {
    Optional<Span> adf = figures.span(AnalyteCode.ADF);
    Optional<Span> ndf = figures.span(AnalyteCode.NDF);
    Optional<Span> printed = figures.span(AnalyteCode.RFV);
    if (adf.isEmpty() || ndf.isEmpty() || printed.isEmpty() || ndf.get().low() <= 0) {
      return Optional.empty();
    }
    Span share = dry.times(0.01);
    boolean onDry = fits(adf.get(), ndf.get(), printed.get());
    boolean asFed = fits(adf.get().over(share), ndf.get().over(share), printed.get());
    return speaks(figures, onDry, asFed);
  }

  private static boolean fits(Span adf, Span ndf, Span printed) {
    return Identities.relativeFeedValue(adf, ndf).widened(Identities.RFV_MARGIN).meets(printed);
  }

  private static Optional<Boolean> speaks(Figures figures, boolean onDry, boolean asFed) {
    boolean saidDry = figures.commonBasis() == Basis.DRY_MATTER;
    return onDry == asFed ? Optional.empty() : Optional.of(saidDry == onDry);
  }
}
