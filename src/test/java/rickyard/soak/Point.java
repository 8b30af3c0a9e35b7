package rickyard.soak;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * One call of a run, and what happens there.
 *
 * @param call the call
 * @param what the signal that is sent or the error that is given
 * @param when its number within its thread; with {@code +} all calls from there on
 */
record Point(String call, String what, String when) {

  /** Every call that was seen, and two more of each: which thread makes it is a matter of time. */
  static List<Point> all(Strace strace, String what, boolean fromThenOn) {
    List<Point> points = new ArrayList<>();
    strace
        .calls()
        .forEach(
            (call, most) -> {
              for (int nth = 1; nth <= most + 2; nth++) {
                points.add(new Point(call, what, nth + (fromThenOn ? "+" : "")));
              }
            });
    return points;
  }

  /** Some of them, in the order of a seed; all of them if there are not more. */
  static List<Point> some(List<Point> points, int most, long seed) {
    List<Point> shuffled = new ArrayList<>(points);
    Collections.shuffle(shuffled, new Random(seed));
    return shuffled.subList(0, Math.min(most, shuffled.size()));
  }

  @Override
  public String toString() {
    return what + " at " + call + " " + when;
  }
}
