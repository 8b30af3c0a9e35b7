package rickyard.intake.interpret;

import java.util.HashMap;
import java.util.Map;

/**
 * One instance of what is equal: the figures of a long table repeat what is said of them. It
 * forgets all when it is full, so that its size has a bound.
 */
final class Same<T> {
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
