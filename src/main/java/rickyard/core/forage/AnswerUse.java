package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * What became of one answer of the office: nothing is overridden silently.
 *
 * @param answer as the register has it
 * @param kind of the question that it answers; empty if there is no such question
 * @param document SHA-256 of the document that the question is about; empty if none
 * @param about what the question is about
 * @param question the question
 * @param effect settled, not-a-choice, no-effect or no-such-question
 */
public record AnswerUse(
    Answer answer, String kind, String document, String about, String question, String effect) {
  public static final String SETTLED = "settled";
  public static final String NOT_A_CHOICE = "not-a-choice";
  public static final String NO_EFFECT = "no-effect";
  public static final String NO_SUCH_QUESTION = "no-such-question";

  public AnswerUse {
    requireNonNull(answer, "answer");
    requireNonNull(kind, "kind");
    requireNonNull(document, "document");
    requireNonNull(about, "about");
    requireNonNull(question, "question");
    requireNonNull(effect, "effect");
  }
}
