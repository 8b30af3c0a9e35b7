package rickyard.core.remedy.share;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Shares hay out: first that the lowest rank goes short of as little as can be, then the next rank
 * and so on; then at the least price for those who need cleared hay, whoever needs none staying on
 * what it is fed where it can; then with the fewest kilograms changed; among equals in the order of
 * ids. A function of the problem: the order of its needs and piles does not count.
 */
public final class Sharer {
  private Sharer() {}

  /** The best sharing. */
  public static Sharing share(ShareProblem problem) {
    List<NeedClass> classes = NeedClasses.of(problem, true);
    SortedMap<Integer, Long> without = coverage(problem);
    ShareNetwork.Solved solved = ShareNetwork.ofCost(problem, classes, without).solve();
    return new Dealing(problem, classes, solved).deal();
  }

  /**
   * Grams of dry matter that each rank goes without at best; ranks that lack nothing are left out.
   */
  public static SortedMap<Integer, Long> shortByRank(ShareProblem problem) {
    SortedMap<Integer, Long> grams = new TreeMap<>();
    coverage(problem).forEach((rank, units) -> grams.put(rank, units * Units.GRAMS));
    return grams;
  }

  private static SortedMap<Integer, Long> coverage(ShareProblem problem) {
    return ShareNetwork.ofCoverage(problem, NeedClasses.of(problem, false)).solve().shortByRank();
  }
}
