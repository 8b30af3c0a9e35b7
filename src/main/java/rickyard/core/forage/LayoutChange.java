package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One thing in which a report's layout differs from the one remembered.
 *
 * @param words the difference in one clause
 * @param touches what hangs on it
 */
record LayoutChange(String words, Touches touches) {

  /** What a change may make wrong. */
  enum Touches {
    /** Words only: it is shown. */
    WORDS,
    /** Which column or basis a figure stands in: it is asked unless the figures prove it. */
    COLUMN,
    /** The size of a figure: it is asked. */
    UNIT
  }

  LayoutChange {
    requireNonNull(words, "words");
    requireNonNull(touches, "touches");
  }

  boolean isGrave() {
    return touches != Touches.WORDS;
  }
}
