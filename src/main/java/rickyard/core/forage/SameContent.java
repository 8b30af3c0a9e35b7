package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.quantity.Measured;

/** Whether two samples print the same figures, whatever the file and its layout. */
final class SameContent {
  private SameContent() {}

  /** Every figure that both print can be the same number within its printed rounding. */
  static boolean withinRounding(Sample a, Sample b) {
    return compare(a, b, 1, false);
  }

  /** At least two shared figures, and every shared figure exactly the same number. */
  static boolean exactly(Sample a, Sample b) {
    return compare(a, b, 2, true);
  }

  private static boolean compare(Sample a, Sample b, int least, boolean exact) {
    Map<String, Measured> first = figures(a);
    Map<String, Measured> second = figures(b);
    int shared = 0;
    for (Map.Entry<String, Measured> entry : first.entrySet()) {
      Measured other = second.get(entry.getKey());
      if (other != null) {
        shared++;
        if (!agree(entry.getValue(), other, exact)) {
          return false;
        }
      }
    }
    return shared >= least;
  }

  private static boolean agree(Measured a, Measured b, boolean exact) {
    if (a.unit().dimension() != b.unit().dimension()) {
      return false;
    }
    Measured other = b.in(a.unit());
    double slack = 1e-9 * Math.max(a.best(), other.best());
    if (exact) {
      return Math.abs(a.best() - other.best()) <= slack;
    }
    return a.low() <= other.high() + slack && other.low() <= a.high() + slack;
  }

  /** The figures in which two samples differ, in words; empty if in none. */
  static String difference(Sample a, Sample b) {
    Map<String, Measured> second = figures(b);
    List<String> words = new ArrayList<>();
    figures(a)
        .forEach(
            (name, value) -> {
              Measured other = second.get(name);
              if (other != null && !agree(value, other, true)) {
                words.add(name + ": " + value.best() + " and " + other.best());
              }
            });
    return words.isEmpty() ? "" : "They differ in " + String.join(", ", words) + ".";
  }

  private static Map<String, Measured> figures(Sample sample) {
    Map<String, Measured> figures = new TreeMap<>();
    for (Reading reading : sample.readings()) {
      Optional<Measured> value = reading.value();
      value.ifPresent(v -> figures.putIfAbsent(reading.analyte() + " " + v.basis().code(), v));
    }
    return figures;
  }
}
