package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * A spelling that the dictionary knows.
 *
 * @param words its words as {@link Words} cuts them, at least one
 * @param kind what kind of thing it names
 * @param meaning which one, in the words of {@link Kind}
 */
public record Phrase(List<String> words, Kind kind, String meaning) implements Serializable {

  public Phrase {
    words = List.copyOf(words);
    requireNonNull(kind, "kind");
    requireNonNull(meaning, "meaning");
    if (words.isEmpty()) {
      throw new IllegalArgumentException("a spelling without a word");
    }
  }

  /** A spelling cut into words; empty if no word is left of it. */
  public static Optional<Phrase> find(String spelling, Kind kind, String meaning) {
    List<String> words = Words.of(spelling);
    return words.isEmpty() ? Optional.empty() : Optional.of(new Phrase(words, kind, meaning));
  }
}
