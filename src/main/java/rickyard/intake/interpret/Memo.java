package rickyard.intake.interpret;

import java.util.function.Function;
import rickyard.core.forage.Remembered;

/**
 * Remembers what was made of a text: in a long table most texts were read before. It keeps no long
 * text, so that its size has a bound: it outlives a document. Several threads may ask at once.
 */
final class Memo<T> {
  private static final int LONGEST = 500;

  private final Function<String, T> make;
  private final Remembered<String, T> known;

  Memo(Function<String, T> make) {
    this.make = make;
    this.known = new Remembered<>(make);
  }

  T of(String text) {
    return text.length() > LONGEST ? make.apply(text) : known.of(text);
  }
}
