package rickyard.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Two things measured in turns, so that a machine that becomes busier does so for both.
 *
 * @param what is compared, in words
 * @param ours what ours cost, one each time
 * @param theirs what the other cost
 * @param goal the ratio that is aimed at
 */
record Comparison(
    String what, List<WholeProcess.Cost> ours, List<WholeProcess.Cost> theirs, double goal) {

  /** One measurement. */
  @FunctionalInterface
  interface Run {
    WholeProcess.Cost once() throws IOException, InterruptedException;
  }

  static Comparison of(String what, int times, Run ours, Run theirs, double goal)
      throws IOException, InterruptedException {
    List<WholeProcess.Cost> first = new ArrayList<>();
    List<WholeProcess.Cost> second = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      second.add(theirs.once());
      first.add(ours.once());
    }
    return new Comparison(what, List.copyOf(first), List.copyOf(second), goal);
  }

  private static double seconds(List<WholeProcess.Cost> costs) {
    return WholeProcess.median(costs.stream().map(WholeProcess.Cost::seconds).toList());
  }

  private static double computing(List<WholeProcess.Cost> costs) {
    return WholeProcess.median(costs.stream().map(WholeProcess.Cost::computing).toList());
  }

  private static double peak(List<WholeProcess.Cost> costs) {
    return WholeProcess.median(costs.stream().map(c -> (double) c.peakMib()).toList());
  }

  /** A row of the page: both on the wall, their ratio, the goal, both in processor time. */
  String row() {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %.2f | %s | %s | %s | %.2f |",
        what,
        WholeProcess.seconds(seconds(ours)),
        WholeProcess.seconds(seconds(theirs)),
        seconds(ours) / seconds(theirs),
        goal > 0 ? String.format(Locale.ROOT, "%.1f", goal) : "",
        WholeProcess.seconds(computing(ours)),
        WholeProcess.seconds(computing(theirs)),
        computing(ours) / computing(theirs));
  }

  /** A row of the table of memory. */
  String memory(double most) {
    return String.format(
        Locale.ROOT,
        "| %s | %.0f MiB | %.0f MiB | %.2f | %.1f |",
        what,
        peak(ours),
        peak(theirs),
        peak(ours) / peak(theirs),
        most);
  }
}
