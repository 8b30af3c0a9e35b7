package rickyard.core.remedy.share;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;

/**
 * How long sharing takes and how much memory it uses, and that it is the best there is: by a second
 * solver, and by looking for a cycle of exchanges over every single pair of horse and pile.
 *
 * <p>{@code java -cp target/test-classes:target/classes:... rickyard.core.remedy.share.ShareBench
 * 2000 200}
 */
public final class ShareBench {
  private static final int ROUNDS = 5;

  private ShareBench() {}

  public static void main(String[] args) {
    int horses = Integer.parseInt(args[0]);
    int lots = Integer.parseInt(args[1]);
    ShareProblem problem = Offices.random(7, horses, lots);
    double[] seconds = new double[ROUNDS];
    Sharing sharing = Sharer.share(problem);
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      Sharing again = Sharer.share(problem);
      seconds[round] = (System.nanoTime() - start) / 1e9;
      if (!again.equals(sharing)) {
        throw new IllegalStateException("a repeat differs");
      }
    }
    Arrays.sort(seconds);
    long start = System.nanoTime();
    Sharer.shortByRank(problem);
    System.out.printf(
        "%d horses, %d lots, %d piles: median %.2f s, worst %.2f s, coverage alone %.2f s, peak heap"
            + " %d MB%n",
        horses,
        lots,
        problem.piles().size(),
        seconds[ROUNDS / 2],
        seconds[ROUNDS - 1],
        (System.nanoTime() - start) / 1e9,
        peak() >> 20);
    Ledgered ours = Ledgered.of(problem, sharing);
    System.out.println("short by rank, tenths of kg: " + ours.shortByRank());
    start = System.nanoTime();
    System.out.printf(
        "no exchange improves it: %b (%.1f s)%n",
        new NoBetter(problem, sharing).holds(), (System.nanoTime() - start) / 1e9);
    start = System.nanoTime();
    PlainProgram other = new PlainProgram(problem, true);
    System.out.printf(
        "second solver: short %s, cost %.6e against %.6e (%.1f s)%n",
        other.shortByRank(), other.cost(), ours.cost(), (System.nanoTime() - start) / 1e9);
  }

  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(usage -> usage.getUsed())
        .sum();
  }
}
