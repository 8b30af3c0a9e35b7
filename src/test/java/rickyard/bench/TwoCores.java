package rickyard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How much more two cores of this machine compute than one: 2 where they are apart, less where they
 * are halves of one or shared with strangers. No program does better by running twice.
 */
final class TwoCores {
  private static final int ROUNDS = 5;
  private static final int STEPS = 60_000_000;
  private static final int TABLE = 1 << 20;

  private TwoCores() {}

  /** The work done at a time by two threads over that done by one; the middle of five rounds. */
  static double scaling() {
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      seconds(threads, 2);
      List<Double> ratios = new ArrayList<>();
      for (int i = 0; i < ROUNDS; i++) {
        ratios.add(2 * seconds(threads, 1) / seconds(threads, 2));
      }
      return ratios.stream().sorted().toList().get(ROUNDS / 2);
    } catch (Exception e) {
      throw new IllegalStateException("the cores could not be compared", e);
    } finally {
      threads.shutdownNow();
    }
  }

  private static double seconds(ExecutorService threads, int count) throws Exception {
    List<Callable<Integer>> work = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      work.add(TwoCores::compute);
    }
    long begun = System.nanoTime();
    int sum = 0;
    for (Future<Integer> done : threads.invokeAll(work)) {
      sum += done.get();
    }
    // The sum is used, so that nothing is left out as useless.
    return (System.nanoTime() - begun) / 1e9 + (sum == 1 ? 1e-12 : 0);
  }

  /** Arithmetic over a table of 4 MiB: some of it waits for memory, as a reader does. */
  private static Integer compute() {
    int[] table = new int[TABLE];
    int x = 1;
    for (int i = 0; i < STEPS; i++) {
      x = x * 1664525 + 1013904223;
      table[x >>> 12] += x ^ i;
    }
    return table[x >>> 12];
  }
}
