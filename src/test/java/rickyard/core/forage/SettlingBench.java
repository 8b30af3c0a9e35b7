package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the time of settling grows: a tenth of the samples and all of them, in one run. Prints
 * milliseconds and ratio for one long document with and without a register, for a report each, and
 * for a season that was amended as a whole.
 *
 * <p>{@code java -cp target/test-classes:target/classes:... rickyard.core.forage.SettlingBench
 * 25000}
 */
public final class SettlingBench {
  private static final int ROUNDS = 3;

  private SettlingBench() {}

  /** Samples of one kind of season. */
  private interface Season {
    Unsettled of(int samples);
  }

  private static String label(int i) {
    return "L-" + i;
  }

  private static Sample[] samples(int count, double more) {
    Sample[] samples = new Sample[count];
    for (int i = 0; i < count; i++) {
      samples[i] = Reports.sugars(label(i), 6 + i % 70 / 10.0 + more, 1);
    }
    return samples;
  }

  private static List<Lot> lots(int count) {
    List<Lot> lots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lots.add(Reports.lot(label(i), Optional.empty()));
    }
    return lots;
  }

  private static Unsettled unsettled(List<Received> reports, List<Lot> lots) {
    return new Unsettled(reports, lots, List.of(), List.of(), List.of(), Reports.AS_OF);
  }

  private static List<Received> oneEach(int count) {
    List<Received> reports = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      reports.add(Reports.fin("d" + i, "R-" + i, Reports.sugars(label(i), 6 + i % 70 / 10.0, 1)));
    }
    return reports;
  }

  private static List<Received> amended(int count) {
    return List.of(
        Reports.fin("old", "R-1", samples(count, 0)),
        Reports.received(
            "new", "R-1", 2, ReportStatus.AMENDED, Optional.empty(), samples(count, 0.5)));
  }

  public static void main(String[] args) {
    int all = args.length == 0 ? 25_000 : Integer.parseInt(args[0]);
    measure("one document, no register", all, n -> one(n, List.of()));
    measure("one document, its lots known", all, n -> one(n, lots(n)));
    measure("one document, other lots known", all, n -> one(n, lots(n / 2)));
    measure("a report each, their lots known", all, n -> unsettled(oneEach(n), lots(n)));
    measure("a season amended as a whole", all, n -> unsettled(amended(n), lots(n)));
  }

  private static Unsettled one(int count, List<Lot> lots) {
    return unsettled(List.of(Reports.fin("season", "R-1", samples(count, 0))), lots);
  }

  private static void measure(String name, int all, Season season) {
    double tenth = millis(season.of(all / 10));
    double whole = millis(season.of(all));
    System.out.printf(
        "%-34s %6d: %7.0f ms, %6d: %7.0f ms, ratio %.1f%n",
        name, all / 10, tenth, all, whole, whole / tenth);
  }

  /** The best of a few: the machine may do other things besides. */
  private static double millis(Unsettled unsettled) {
    double best = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      Reports.settle(unsettled);
      best = Math.min(best, (System.nanoTime() - start) / 1e6);
    }
    return best;
  }
}
