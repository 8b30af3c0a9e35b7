package rickyard.second;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

/** Collects where the two computations differ, so that one run shows all of it. */
final class Differences {
  private static final int SHOWN = 40;

  /** Chances smaller than this are held with fewer digits by the machine itself. */
  private static final double SMALLEST = 1e-290;

  private final List<String> found = new ArrayList<>();
  private int compared;

  /** Equal to within a share of the larger, or both not there. */
  void number(String what, double first, double second, double relative) {
    compared++;
    boolean isSame =
        first == second
            || Math.max(Math.abs(first), Math.abs(second)) < SMALLEST
            || (Double.isNaN(first) && Double.isNaN(second))
            || Math.abs(first - second) <= relative * Math.max(Math.abs(first), Math.abs(second));
    if (!isSame) {
      found.add(what + ": " + first + ", second computation " + second);
    }
  }

  /** Equal to within a stated amount, or both not there. */
  void near(String what, double first, double second, double tolerance) {
    compared++;
    boolean isSame =
        (Double.isNaN(first) && Double.isNaN(second)) || Math.abs(first - second) <= tolerance;
    if (!isSame) {
      found.add(what + ": " + first + ", second computation " + second);
    }
  }

  void word(String what, String first, String second) {
    compared++;
    if (!first.equals(second)) {
      found.add(what + ": " + first + ", second computation " + second);
    }
  }

  int compared() {
    return compared;
  }

  void assertNone() {
    assertTrue(
        found.isEmpty(),
        () ->
            found.size()
                + " of "
                + compared
                + " differ\n"
                + String.join("\n", found.subList(0, Math.min(SHOWN, found.size()))));
  }
}
