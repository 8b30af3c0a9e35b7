package rickyard.intake.grid.csv;

import java.util.HashMap;
import java.util.Map;

/**
 * One instance of what a long table repeats. It forgets all when it is full: a column of names that
 * are never the same again must not fill it.
 */
final class Repeated<T> {
  private static final int MOST = 20_000;

  private final Map<T, T> known = new HashMap<>();

  T of(T value) {
    T same = known.get(value);
    if (same != null) {
      return same;
    }
    if (known.size() >= MOST) {
      known.clear();
    }
    known.put(value, value);
    return value;
  }
}
