package rickyard.post;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a named person decided of one message: a row of decisions.csv of the kind release.
 *
 * @param about the client or adviser
 * @param id of the content that was released, and of no other
 * @param word what is to be done
 * @param by who decided it
 */
public record Release(String about, String id, Word word, String by) {
  private static final Pattern VALUE =
      Pattern.compile("([0-9a-f]{32})(?:\\s+(again|arrived))?", Pattern.CASE_INSENSITIVE);

  /** What is to be done. */
  public enum Word {
    /** It may go. */
    SEND,
    /** It was in doubt and did not arrive: it may go once more. */
    AGAIN,
    /** It was in doubt and did arrive. */
    ARRIVED
  }

  /**
   * Reads the value of a row.
   *
   * @return empty if it names no content
   */
  public static Optional<Release> of(String about, String value, String by) {
    Matcher found = VALUE.matcher(value.strip());
    if (!found.matches()) {
      return Optional.empty();
    }
    Word word =
        found.group(2) == null ? Word.SEND : Word.valueOf(found.group(2).toUpperCase(Locale.ROOT));
    return Optional.of(new Release(about, found.group(1).toLowerCase(Locale.ROOT), word, by));
  }
}
