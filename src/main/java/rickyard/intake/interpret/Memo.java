package rickyard.intake.interpret;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Remembers what was made of a text: in a long table most texts were read before. It forgets all
 * when it is full and keeps no long text, so that its size has a bound: it outlives a document.
 * Several threads may ask at once.
 */
final class Memo<T> {
  private static final int MOST = 20_000;
  private static final int LONGEST = 500;

  private final Map<String, T> known = new ConcurrentHashMap<>();
  private final Function<String, T> make;

  Memo(Function<String, T> make) {
    this.make = make;
  }

  T of(String text) {
    T made = known.get(text);
    if (made == null) {
      made = make.apply(text);
      if (text.length() > LONGEST) {
        return made;
      }
      if (known.size() >= MOST) {
        known.clear();
      }
      known.put(text, made);
    }
    return made;
  }
}
