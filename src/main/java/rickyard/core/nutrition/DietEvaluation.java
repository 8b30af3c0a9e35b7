package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** One evaluation of a ration: holds what its steps share. */
final class DietEvaluation {
  private final Horse horse;
  private final Requirements requirements;
  private final FeedingStandards standards;
  private final List<DietItem> items;
  private final List<Merged> merged;
  private final Intake intake;

  /** All portions of one foodstuff together: their errors are one and the same. */
  private record Merged(Foodstuff food, double kgDm, double kgDmU, double amountU, double share) {
    Merged plus(Merged other) {
      if (!food.equals(other.food)) {
        throw new IllegalArgumentException("two different foodstuffs are called " + food.key());
      }
      return new Merged(
          food,
          kgDm + other.kgDm,
          kgDmU + other.kgDmU,
          amountU + other.amountU,
          share + other.share);
    }
  }

  DietEvaluation(
      Horse horse, List<Portion> portions, Requirements requirements, FeedingStandards standards) {
    this.horse = horse;
    this.requirements = requirements;
    this.standards = standards;
    this.intake = Intake.of(portions, horse, standards);
    this.items = items(portions, intake.kgDm());
    this.merged = merge(items);
  }

  private static List<DietItem> items(List<Portion> portions, double total) {
    return portions.stream()
        .map(p -> new DietItem(p, p.kgDm(), total > 0 ? p.kgDm() / total : 0))
        .toList();
  }

  private static List<Merged> merge(List<DietItem> items) {
    Map<String, Merged> byKey = new TreeMap<>();
    for (DietItem item : items) {
      Portion p = item.portion();
      Merged one = new Merged(p.food(), p.kgDm(), p.kgDmU(), p.amountDmU(), item.share());
      byKey.merge(p.food().key(), one, Merged::plus);
    }
    return List.copyOf(byKey.values());
  }

  Diet diet() {
    SortedMap<AnalyteCode, LimitContents> forLimits = forLimits();
    Diet diet = figures(forLimits);
    return diet.withNotes(DietNotes.of(diet, horse, forLimits, requirements, standards));
  }

  /** The diet without what must be said beside it. */
  Diet figures() {
    return figures(forLimits());
  }

  private SortedMap<AnalyteCode, LimitContents> forLimits() {
    SortedMap<AnalyteCode, LimitContents> forLimits = new TreeMap<>();
    codes().forEach(code -> forLimits.put(code, LimitContents.of(code, items, standards)));
    return forLimits;
  }

  private Diet figures(SortedMap<AnalyteCode, LimitContents> forLimits) {
    SortedMap<AnalyteCode, Measured> contents = new TreeMap<>();
    SortedMap<AnalyteCode, List<String>> missing = new TreeMap<>();
    forLimits.forEach(
        (code, found) -> {
          content(found).ifPresent(value -> contents.put(code, value));
          if (!found.missing().isEmpty()) {
            missing.put(code, found.missing());
          }
        });
    Map<Nutrient, NutrientLine> lines = lines();
    NutrientLine energy = requireNonNull(lines.get(Nutrient.DE));
    boolean mayCut = horse.vetPlan() || !intake.rule().isNeverRestricted();
    boolean isGrassLeftOut = FedOutside.grazesUncounted(horse, items);
    return new Diet(
        horse.id(),
        items,
        intake,
        lines,
        contents,
        missing,
        gramsPerDay(forLimits),
        BucketMeals.largest(items, horse, forLimits, standards),
        EnergyView.of(energy, horse, standards.settings(), mayCut, isGrassLeftOut),
        List.of());
  }

  /** Every analyte that some item knows on dry matter, and always the sugars and potassium. */
  private SortedSet<AnalyteCode> codes() {
    SortedSet<AnalyteCode> codes = new TreeSet<>(BucketMeals.CODES);
    for (Merged m : merged) {
      m.food
          .contents()
          .forEach(
              (code, value) -> {
                if (value.basis() == Basis.DRY_MATTER) {
                  codes.add(code);
                }
              });
    }
    return codes;
  }

  /**
   * The content of the whole on dry matter: {@code C = Σ d c}, {@code u = √Σ(d u)²}, with d the
   * share of the dry matter; an amount that was not weighed adds {@code ((c - C) u_m / M)²}. Where
   * an item is unknown the sum is a lower end: only lower ends count, no high value that was taken
   * for want of a label.
   */
  @Cites(source = "definition", locator = "a blend holds the dry-matter weighted mean")
  @Cites(source = "jcgm100-2008", locator = "5.1.2, law of propagation")
  private Optional<Measured> content(LimitContents found) {
    if (intake.kgDm() <= 0 || found.byItem().isEmpty()) {
      return Optional.empty();
    }
    Unit unit = found.byItem().values().iterator().next().unit();
    double[] sums = new double[5];
    List<Evidence.Term> terms = new ArrayList<>();
    for (Merged m : merged) {
      Measured value = found.byItem().get(m.food.key());
      if (value != null && m.share > 0) {
        Measured c = value.in(unit);
        sums[0] += m.share * c.best();
        sums[1] += m.share * c.low();
        sums[2] += m.share * c.high();
        sums[3] += m.share * c.lower();
        sums[4] += m.share * c.upper();
        terms.add(new Evidence.Term(m.food.key(), value));
      }
    }
    boolean isOpen = !found.missing().isEmpty();
    return Optional.of(
        new Measured(
            unit,
            Basis.DRY_MATTER,
            isOpen ? sums[3] : sums[0],
            Math.min(sums[1], isOpen ? sums[3] : sums[1]),
            isOpen ? Double.POSITIVE_INFINITY : sums[2],
            sums[3],
            isOpen ? Double.POSITIVE_INFINITY : sums[4],
            mixU(found, unit, sums[0]),
            new Evidence.Derived("sum of share of dry matter x content", terms)));
  }

  private double mixU(LimitContents found, Unit unit, double mean) {
    double variance = 0;
    for (Merged m : merged) {
      Measured value = found.byItem().get(m.food.key());
      if (value != null) {
        Measured c = value.in(unit);
        double content = m.share * c.u();
        double amount = (c.best() - mean) * amountU(m, c.best() < mean) / intake.kgDm();
        variance += content * content + amount * amount;
      }
    }
    return StrictMath.sqrt(variance);
  }

  /**
   * How far an amount may be off, kg of dry matter. Less of an item poorer than the mix is what
   * makes the mix worse, and there cannot be less than none of it: half the amount (k = 1) is the
   * most that counts. Without this more sugar in such an item could make a verdict better.
   */
  private static double amountU(Merged m, boolean isPoorer) {
    return isPoorer ? Math.min(m.amountU, m.kgDm / 2) : m.amountU;
  }

  private SortedMap<AnalyteCode, Amount> gramsPerDay(
      SortedMap<AnalyteCode, LimitContents> forLimits) {
    SortedMap<AnalyteCode, Amount> grams = new TreeMap<>();
    for (AnalyteCode code : BucketMeals.CODES) {
      Map<String, Measured> known = requireNonNull(forLimits.get(code)).byItem();
      Tally tally = new Tally(Unit.PERCENT, 10);
      merged.forEach(m -> add(tally, m, Optional.ofNullable(known.get(m.food.key()))));
      grams.put(code, tally.total());
    }
    return grams;
  }

  private Map<Nutrient, NutrientLine> lines() {
    Map<Nutrient, NutrientLine> lines = new EnumMap<>(Nutrient.class);
    lines.put(Nutrient.DM, dryMatter());
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed()) {
        lines.put(nutrient, summed(nutrient));
      }
    }
    Amount calcium = requireNonNull(lines.get(Nutrient.CA)).supply();
    Amount phosphorus = requireNonNull(lines.get(Nutrient.P)).supply();
    lines.put(Nutrient.CA_P, CalciumRatio.line(calcium, phosphorus, horse, standards.settings()));
    return lines;
  }

  private NutrientLine dryMatter() {
    double kg = intake.kgDm();
    double variance = merged.stream().mapToDouble(m -> m.kgDmU * m.kgDmU).sum();
    double u = StrictMath.sqrt(variance);
    Origin origin =
        merged.stream()
            .map(m -> Origin.of(m.food.dryMatter().evidence()))
            .reduce(Origin::and)
            .orElse(Origin.REPORTED);
    Amount supply = new Amount(kg, kg, kg, u, kg, origin, List.of());
    return NutrientLine.of(
        Nutrient.DM,
        supply,
        OptionalDouble.of(intake.rule().firstFloor() / 100 * intake.judgedWeightKg()),
        OptionalDouble.of(intake.rule().usualMax() / 100 * intake.judgedWeightKg()),
        true);
  }

  private NutrientLine summed(Nutrient nutrient) {
    Tally tally = new Tally(nutrient.contentUnit(), nutrient.perKg());
    merged.forEach(m -> add(tally, m, m.food.find(nutrient.analyte())));
    Optional<Tolerance> tolerance = standards.findTolerance(nutrient.analyte());
    OptionalDouble max =
        tolerance
            .map(t -> OptionalDouble.of(t.perDay(nutrient, intake.kgDm(), horse.bodyWeightKg())))
            .orElseGet(OptionalDouble::empty);
    Amount supply = tally.total();
    return NutrientLine.of(
        nutrient,
        supply,
        requirements.get(nutrient).heldAgainst(supply),
        max,
        tolerance.map(Tolerance::alarms).orElse(false));
  }

  private static void add(Tally tally, Merged m, Optional<Measured> content) {
    if (content.isPresent()) {
      tally.add(m.kgDm, m.kgDmU, content.get());
    } else if (m.kgDm > 0) {
      tally.addUnknown(m.food.key());
    }
  }
}
