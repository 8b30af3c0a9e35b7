package rickyard.core.advice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.judgement.Bound;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.IfMissing;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.Origin;
import rickyard.core.nutrition.Tolerance;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;
import rickyard.core.remedy.CheckedLimit;
import rickyard.core.remedy.Content;
import rickyard.core.remedy.DietLimit;
import rickyard.core.remedy.MealLimit;

/**
 * The limits of a horse as the search for remedies takes them; those that ask for a change bind.
 */
final class SearchLimits {
  /** Standard uncertainties that a ceiling counts. */
  private static final double COVERAGE = 2;

  private SearchLimits() {}

  private static boolean isBinding(Limit limit) {
    return limit.severity() == Severity.STOP || limit.severity() == Severity.CHANGE;
  }

  static List<DietLimit> ofDiet(HorseGroups groups, List<Limit> limits) {
    return groups.limits(limits, LimitSubject.DIET).stream()
        .filter(SearchLimits::isBinding)
        .filter(l -> l.unit().basis() == Basis.DRY_MATTER)
        .map(
            l ->
                new DietLimit(
                    l.id(),
                    l.quantity(),
                    l.words(),
                    l.value(),
                    l.bound() == Bound.MAX,
                    l.guardFactor(),
                    l.ifMissing() == IfMissing.ASK))
        .toList();
  }

  /** Maximum tolerable levels of the total diet; two standard uncertainties count, as in a diet. */
  static List<DietLimit> ofTolerances(FeedingStandards standards) {
    return standards.tolerances().stream()
        .filter(t -> t.alarms() && !t.perBodyWeight())
        .flatMap(t -> Nutrient.findByCode(t.analyte().value()).stream().map(n -> ceiling(n, t)))
        .toList();
  }

  private static DietLimit ceiling(Nutrient nutrient, Tolerance tolerance) {
    String quantity = quantity(nutrient);
    return new DietLimit(
        quantity, quantity, nutrient.code(), tolerance.max(), true, COVERAGE, false);
  }

  private static String quantity(Nutrient nutrient) {
    return "ceiling-" + nutrient.code();
  }

  /**
   * What the ceilings count of a food: what is reported at its upper end, what is assumed at best.
   */
  static SortedMap<String, Content> ceilingContents(Foodstuff food) {
    SortedMap<String, Content> contents = new TreeMap<>();
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed()) {
        food.find(nutrient.analyte())
            .map(m -> m.in(nutrient.contentUnit()))
            .ifPresent(m -> contents.put(quantity(nutrient), ofCeiling(m)));
      }
    }
    return contents;
  }

  private static Content ofCeiling(Measured m) {
    boolean isReported = Origin.of(m.evidence()) == Origin.REPORTED;
    boolean isUpper = isReported && m.isBoundedAbove();
    return new Content(isUpper ? m.upper() : m.best(), isReported ? m.u() : 0);
  }

  static List<MealLimit> ofMeal(HorseGroups groups, List<Limit> limits, double bodyWeightKg) {
    return groups.limits(limits, LimitSubject.BUCKET_MEAL).stream()
        .filter(SearchLimits::isBinding)
        .map(
            l ->
                new MealLimit(
                    l.id(),
                    l.quantity(),
                    l.words(),
                    l.value() * (l.unit().unit() == Unit.G_PER_KG ? bodyWeightKg : 1),
                    l.guardFactor()))
        .toList();
  }

  /** The quantity, and whether its value is only a lower end. */
  private static String words(Verdict verdict) {
    boolean isOpen = verdict.value().filter(v -> !v.isBoundedAbove()).isPresent();
    return verdict.limit().words() + (isOpen ? " at least" : "");
  }

  static CheckedLimit checked(Verdict verdict) {
    return new CheckedLimit(
        verdict.limit().id(),
        words(verdict),
        verdict.limit().value(),
        verdict.limit().unit().text(),
        verdict.value().map(v -> OptionalDouble.of(v.best())).orElseGet(OptionalDouble::empty),
        verdict.value().map(v -> OptionalDouble.of(v.u())).orElseGet(OptionalDouble::empty),
        verdict.pOver(),
        verdict.word().code(),
        isBinding(verdict.limit()));
  }
}
