package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * A diet or meal held against one limit by the diet code.
 *
 * @param limitId row of the limits table
 * @param words the quantity in the field's words
 * @param limit the bound
 * @param unit of limit and value
 * @param value best value; empty if it cannot be told
 * @param u standard uncertainty; empty if unknown
 * @param pOver chance of being on the wrong side; empty if it cannot be told
 * @param word clears, borderline-under, borderline-over, exceeds or cannot-judge
 * @param isBinding whether a proposal must clear it (severity stop or change)
 */
public record CheckedLimit(
    String limitId,
    String words,
    double limit,
    String unit,
    OptionalDouble value,
    OptionalDouble u,
    OptionalDouble pOver,
    String word,
    boolean isBinding) {
  public CheckedLimit {
    requireNonNull(limitId, "limitId");
    requireNonNull(words, "words");
    requireNonNull(unit, "unit");
    requireNonNull(value, "value");
    requireNonNull(u, "u");
    requireNonNull(pOver, "pOver");
    requireNonNull(word, "word");
  }

  boolean isCleared() {
    return word.equals("clears") || word.equals("no-limit");
  }

  /** Whether a better test of the same thing could still clear it. */
  boolean isOpen() {
    return word.startsWith("borderline") || word.equals("cannot-judge");
  }
}
