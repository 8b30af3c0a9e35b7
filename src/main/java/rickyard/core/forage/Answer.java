package rickyard.core.forage;

import java.time.LocalDate;

/**
 * What the office answered to a question: a row of answers.csv.
 *
 * @param questionId the question
 * @param answer one of its choices, or a free text
 * @param by who
 * @param on when
 * @param note anything
 * @param scope {@code layout} if it holds for every report of the same layout; else empty
 */
public record Answer(
    String questionId, String answer, String by, LocalDate on, String note, String scope) {

  /** An answer for its own question alone. */
  public Answer(String questionId, String answer, String by, LocalDate on, String note) {
    this(questionId, answer, by, on, note, "");
  }

  boolean isForLayout() {
    return scope.equals("layout");
  }
}
