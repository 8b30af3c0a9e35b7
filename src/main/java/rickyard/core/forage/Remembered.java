package rickyard.core.forage;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What was made of a value that was met before. It forgets all when it is full: values that are
 * never the same again must not fill it. Several threads may ask at once; all get the same answer
 * until it forgets.
 */
public final class Remembered<K, V> {
  private static final int MOST = 20_000;

  private final Map<K, V> known = new ConcurrentHashMap<>();
  private final Function<? super K, ? extends V> make;

  public Remembered(Function<? super K, ? extends V> make) {
    this.make = make;
  }

  /** Answers with the first of several equal values: one instance of what is met often. */
  public static <T> Remembered<T, T> same() {
    return new Remembered<>(Function.identity());
  }

  /** What was made of an equal key before, otherwise what is made of this one now. */
  public V of(K key) {
    V before = known.get(key);
    return before == null ? keep(key, make.apply(key)) : before;
  }

  private V keep(K key, V made) {
    if (known.size() >= MOST) {
      known.clear();
    }
    V before = known.putIfAbsent(key, made);
    return before == null ? made : before;
  }
}
