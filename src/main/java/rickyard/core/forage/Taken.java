package rickyard.core.forage;

import rickyard.core.quantity.Evidence;

/**
 * An answer that a question takes.
 *
 * @param said the choice, or the person's own number, day or lot
 * @param answer as the register has it
 */
record Taken(String said, Answer answer) {
  Evidence evidence() {
    return new Evidence.Answered(answer.questionId(), answer.by(), answer.on().toString());
  }

  boolean is(String choice) {
    return said.equals(choice);
  }

  /** Who said what and when, for a reason or a caption. */
  String words() {
    return "\"" + said + "\" (" + answer.by() + ", " + answer.on() + ")";
  }
}
