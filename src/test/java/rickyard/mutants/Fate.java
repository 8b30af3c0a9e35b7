package rickyard.mutants;

/** What becomes of an altered report. */
enum Fate {
  /** A question, a figure held back, a report refused: nothing that is in force is wrong. */
  CAUGHT,
  /** Everything in force is as before, and as much. */
  HARMLESS,
  /** A figure in force is wrong, and no lot clears that should not. */
  WRONG_NOT_CLEARING,
  /** A lot clears that should not, and nothing on the page speaks against it. */
  NO_EVIDENCE,
  /** A lot clears that should not. */
  FALSE_CLEAR
}
