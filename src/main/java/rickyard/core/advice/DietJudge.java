package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Judge;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Amount;
import rickyard.core.nutrition.BucketMeal;
import rickyard.core.nutrition.Diet;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Holds a whole diet, and its largest bucket meal, against the limits of a horse. */
final class DietJudge {
  private final List<Limit> limits;
  private final Map<String, String> why;

  /**
   * Prepares the judging.
   *
   * @param limits the table of limits
   * @param why by lot, why its values are not known, in plain words
   */
  DietJudge(List<Limit> limits, Map<String, String> why) {
    this.limits = List.copyOf(limits);
    this.why = Map.copyOf(why);
  }

  /** Every verdict that is not silent, in the order of the table. */
  List<Verdict> judge(Diet diet, HorseGroups groups) {
    List<Verdict> verdicts = new ArrayList<>();
    for (Limit limit : groups.limits(limits, LimitSubject.DIET)) {
      verdicts.add(Judge.judge(limit, diet.content(limit.analyte()), missing(diet, limit)));
    }
    if (!diet.bucketMeal().isEmpty()) {
      for (Limit limit : groups.limits(limits, LimitSubject.BUCKET_MEAL)) {
        verdicts.add(meal(diet.bucketMeal(), limit));
      }
    }
    verdicts.removeIf(Verdict::isSilent);
    return verdicts;
  }

  private String missing(Diet diet, Limit limit) {
    return missing(diet.missingFor(limit.analyte()), limit);
  }

  private String missing(List<String> items, Limit limit) {
    if (items.isEmpty()) {
      return "";
    }
    String named =
        items.stream()
            .map(i -> why.containsKey(i) ? i + " (" + why.get(i) + ")" : i)
            .collect(Collectors.joining(", "));
    boolean isExplained = items.stream().allMatch(why::containsKey);
    return "no "
        + limit.words()
        + " is known of "
        + named
        + (isExplained ? "" : "; have it analysed");
  }

  private Verdict meal(BucketMeal meal, Limit limit) {
    AnalyteCode code = limit.analyte();
    if (!meal.grams().containsKey(code)) {
      return Judge.judge(limit, Optional.empty(), "bucket meals are not summed for " + code);
    }
    boolean perWeight = limit.unit().unit() == Unit.G_PER_KG;
    Amount amount = perWeight ? meal.perKgBodyWeight(code) : meal.get(code);
    return Judge.judge(
        limit, Optional.of(measured(amount, limit)), missing(amount.missing(), limit));
  }

  private static Measured measured(Amount amount, Limit limit) {
    double lower = Math.max(0, amount.lower());
    boolean isOpen = Double.isInfinite(amount.upper());
    return new Measured(
        limit.unit().unit(),
        Basis.NONE,
        isOpen ? lower : Math.max(0, amount.best()),
        lower,
        amount.upper(),
        lower,
        amount.upper(),
        amount.u(),
        new Evidence.Derived("sum over the bucket meal", List.of()));
  }
}
