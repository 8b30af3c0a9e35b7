package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * Something that must be said beside a diet.
 *
 * @param code stable code for filters and tests
 * @param about item key, or empty for the diet as a whole
 * @param words one sentence
 */
public record DietNote(String code, String about, String words) {
  public DietNote {
    requireNonNull(code, "code");
    requireNonNull(about, "about");
    requireNonNull(words, "words");
  }
}
