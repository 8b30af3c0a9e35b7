package rickyard.core.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A changed ration in weighable amounts with what the diet code says of it.
 *
 * @param ration what is fed
 * @param added items that are new or increased by choice, by key
 * @param diet what the diet code says
 * @param score change, distance from the target, shortfalls and cost; less is better
 * @param ideal the same before the amounts were rounded to the scale
 */
record Draft(
    List<Serving> ration, List<Candidate> added, CheckedDiet diet, double score, double ideal) {

  /**
   * The best first: enough, then least beyond the limits, then least newly lacking by reports, then
   * least change and cost before the scale rounds the amounts, so that its steps decide nothing
   * between two lots, then after that, then ids.
   */
  static final Comparator<Draft> BEST_FIRST =
      Comparator.<Draft, Boolean>comparing(d -> !d.diet().isEnough())
          .thenComparingInt(d -> d.diet().isEnough() ? 0 : d.diet().uncleared().size())
          .thenComparingDouble(d -> d.diet().isEnough() ? 0 : d.chanceOver())
          .thenComparingInt(d -> d.diet().newlyShort().size())
          .thenComparingDouble(Draft::tie)
          .thenComparingDouble(Draft::score)
          .thenComparing(Draft::keys);

  Draft {
    ration = List.copyOf(ration);
    added = List.copyOf(added);
  }

  /** The ideal to six decimals of a kilogram: what lies below is dust of the optimiser. */
  private double tie() {
    return Math.rint(ideal * 1e6) / 1e6;
  }

  private double chanceOver() {
    return diet.leading().map(l -> l.pOver().orElse(1)).orElse(0.0);
  }

  private String keys() {
    return ration.stream().map(a -> a.item().key()).collect(Collectors.joining("\u0001"));
  }

  double kgOf(Candidate item) {
    return ration.stream().filter(a -> a.item().isSameAs(item)).mapToDouble(Serving::kg).sum();
  }

  double dmOf(Candidate item) {
    return ration.stream().filter(a -> a.item().isSameAs(item)).mapToDouble(Serving::dmKg).sum();
  }
}
