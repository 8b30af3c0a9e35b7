package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Finds the largest bucket meal of a ration. */
final class BucketMeals {
  static final List<AnalyteCode> CODES = codes();

  private BucketMeals() {}

  private static List<AnalyteCode> codes() {
    List<AnalyteCode> codes = new ArrayList<>(Sugars.CODES);
    codes.add(AnalyteCode.K);
    return List.copyOf(codes);
  }

  static BucketMeal largest(
      List<DietItem> items,
      Horse horse,
      SortedMap<AnalyteCode, LimitContents> forLimits,
      FeedingStandards standards) {
    List<DietItem> bucket = items.stream().filter(i -> !i.portion().asForage()).toList();
    double asFed = 0;
    double dm = 0;
    for (DietItem item : bucket) {
      double meals = meals(item.portion(), horse, standards.settings());
      asFed += item.portion().kgAsFed() / meals;
      dm += item.kgDm() / meals;
    }
    SortedMap<AnalyteCode, Amount> grams = new TreeMap<>();
    for (AnalyteCode code : CODES) {
      Tally tally = new Tally(Unit.PERCENT, 10);
      LimitContents contents = java.util.Objects.requireNonNull(forLimits.get(code));
      bucket.forEach(i -> add(tally, i, contents, meals(i.portion(), horse, standards.settings())));
      grams.put(code, tally.total());
    }
    return new BucketMeal(asFed, dm, horse.bodyWeightKg(), grams);
  }

  private static void add(Tally tally, DietItem item, LimitContents contents, double meals) {
    Measured content = contents.byItem().get(item.portion().food().key());
    if (content != null) {
      tally.add(item.kgDm() / meals, item.portion().kgDmU() / meals, content);
    } else if (item.kgDm() > 0) {
      tally.addUnknown(item.portion().food().key());
    }
  }

  /** Meals of an item: its own, else the horse's, else as few as the setting says. */
  static double meals(Portion portion, Horse horse, Settings settings) {
    return portion
        .meals()
        .orElse(horse.mealsPerDay().orElse((int) settings.number("meals_when_unknown")));
  }
}
