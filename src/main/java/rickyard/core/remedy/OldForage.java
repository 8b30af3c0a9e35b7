package rickyard.core.remedy;

import java.util.SortedMap;
import java.util.TreeMap;

/** What is left, day by day, of the forage that a changeover feeds away. */
final class OldForage {
  private static final double NOTHING_KG = 1e-9;

  private final ScaleSteps steps;
  private final SortedMap<String, Double> left = new TreeMap<>();

  OldForage(ScaleSteps steps) {
    this.steps = steps;
  }

  /** Whether nothing at all is there. */
  static boolean isGone(Candidate item) {
    return item.stock().stockKg().isPresent() && item.stock().stockKg().getAsDouble() <= NOTHING_KG;
  }

  /**
   * Takes a day's amount, with what the others take of it on that day.
   *
   * @return what there is of it, weighable and at most {@code kg}; all of it where the stock is not
   *     known
   */
  double take(Candidate item, double kg) {
    Stock stock = item.stock();
    if (stock.stockKg().isEmpty()) {
      return kg;
    }
    double there = left.getOrDefault(item.key(), stock.stockKg().getAsDouble());
    double taken =
        kg <= there + NOTHING_KG ? kg : Math.max(0, steps.neighbourKg(Math.max(0, there), 0));
    left.put(item.key(), there - taken - stock.othersKgPerDay());
    return taken;
  }
}
