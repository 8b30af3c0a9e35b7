package rickyard.intake.grid;

import java.util.HashMap;
import java.util.Map;

/**
 * One instance of what a long table repeats: texts, and what is said of figures. It forgets all
 * when it is full: a column of names that are never the same again must not fill it.
 */
public final class Repeated<T> {
  private static final int MOST = 20_000;

  private final Map<T, T> known = new HashMap<>();

  /** The first value equal to this one; itself if there was none. */
  public T of(T value) {
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
