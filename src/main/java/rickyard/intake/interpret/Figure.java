package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;

/**
 * What stands in a cell for a result, before unit and basis.
 *
 * @param form number, censored, or a word
 * @param number the number printed; zero where there is none
 * @param half half of its last printed digit; zero where there is no number
 * @param rest the text behind the number: a unit, a basis
 * @param trouble stable code of what is wrong with it; empty if nothing is
 * @param proposal the number it most likely means, if it is in trouble; empty if nobody can say
 */
record Figure(
    Form form, BigDecimal number, BigDecimal half, String rest, String trouble, String proposal) {

  /** What the cell says. */
  enum Form {
    NUMBER,
    /** '&lt;x'. */
    BELOW,
    /** '&gt;x'. */
    ABOVE,
    /** Not detected: below a limit that stands elsewhere, if anywhere. */
    NOT_DETECTED,
    /** Seen but not measured. */
    TRACE,
    /** A mark that says there is no result: '-', 'not tested'. */
    ABSENT
  }

  Figure {
    requireNonNull(form, "form");
    requireNonNull(number, "number");
    requireNonNull(half, "half");
    requireNonNull(rest, "rest");
    requireNonNull(trouble, "trouble");
    requireNonNull(proposal, "proposal");
  }

  static Figure word(Form form) {
    return new Figure(form, BigDecimal.ZERO, BigDecimal.ZERO, "", "", "");
  }

  static Figure troubled(String trouble, String proposal, String rest) {
    return new Figure(Form.NUMBER, BigDecimal.ZERO, BigDecimal.ZERO, rest, trouble, proposal);
  }

  boolean isTroubled() {
    return !trouble.isEmpty();
  }

  boolean hasNumber() {
    return !isTroubled() && (form == Form.NUMBER || form == Form.BELOW || form == Form.ABOVE);
  }
}
