package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  DietJudge(List<Limit> limits) {
    this.limits = List.copyOf(limits);
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

  private static String missing(Diet diet, Limit limit) {
    List<String> items = diet.missingFor(limit.analyte());
    return items.isEmpty()
        ? ""
        : "no " + limit.words() + " is known of " + String.join(", ", items) + "; have it analysed";
  }

  private static Verdict meal(BucketMeal meal, Limit limit) {
    AnalyteCode code = limit.analyte();
    if (!meal.grams().containsKey(code)) {
      return Judge.judge(limit, Optional.empty(), "bucket meals are not summed for " + code);
    }
    boolean perWeight = limit.unit().unit() == Unit.G_PER_KG;
    Amount amount = perWeight ? meal.perKgBodyWeight(code) : meal.get(code);
    String missing =
        amount.isComplete()
            ? ""
            : "no " + limit.words() + " is known of " + String.join(", ", amount.missing());
    return Judge.judge(limit, Optional.of(measured(amount, limit)), missing);
  }

  private static Measured measured(Amount amount, Limit limit) {
    double lower = Math.max(0, amount.lower());
    return new Measured(
        limit.unit().unit(),
        Basis.NONE,
        Math.max(0, amount.best()),
        lower,
        amount.upper(),
        lower,
        amount.upper(),
        amount.u(),
        new Evidence.Derived("sum over the bucket meal", List.of()));
  }
}
