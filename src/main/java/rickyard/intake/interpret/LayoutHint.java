package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/**
 * What is known of a layout that its pages do not say themselves: a row of {@code
 * config/layouts.csv}.
 *
 * @param phrases words that must all stand on the page, each within one cell, as {@link Words} cuts
 *     them
 * @param what which gap it fills
 * @param about the analyte's code, or {@code *} for all
 * @param value af or dm, a unit, day-first or month-first, point or comma, or the code that an open
 *     name stands for
 * @param row where the hint stands, for evidence
 */
public record LayoutHint(
    List<List<String>> phrases, What what, String about, String value, String row)
    implements Serializable {

  /** The gaps that a hint may fill. */
  public enum What {
    BASIS,
    UNIT,
    DATE_ORDER,
    DECIMAL_MARK,
    CARBOHYDRATE,
    NITRATE_FORM
  }

  public LayoutHint {
    phrases = phrases.stream().map(List::copyOf).toList();
    requireNonNull(what, "what");
    requireNonNull(about, "about");
    requireNonNull(value, "value");
    requireNonNull(row, "row");
    if (phrases.isEmpty() || phrases.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("a hint needs words to know its layout by");
    }
  }

  /** The phrases of a text in which semicolons stand between them; empty ones are left out. */
  public static List<List<String>> phrases(String text) {
    return java.util.Arrays.stream(text.split(";", -1))
        .map(Words::of)
        .filter(words -> !words.isEmpty())
        .toList();
  }
}
