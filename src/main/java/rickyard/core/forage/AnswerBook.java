package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * The answers of the office by question, and what became of each; of several to one question the
 * latest counts.
 */
final class AnswerBook {
  private final Map<String, Answer> byId = new TreeMap<>();
  private final Map<String, AnswerUse> uses = new TreeMap<>();

  AnswerBook(List<Answer> answers) {
    answers.stream()
        .sorted(Comparator.comparing(Answer::on))
        .filter(a -> !a.answer().isBlank())
        .forEach(a -> byId.put(a.questionId().strip(), a));
  }

  /** The answer given to a question, whether the question takes it or not. */
  Optional<Answer> find(String questionId) {
    return Optional.ofNullable(byId.get(questionId));
  }

  /** The answer to a question, if there is one that it takes. */
  Optional<Taken> take(Question question) {
    return take(question, Optional::empty);
  }

  /**
   * The answer to a question, if there is one that it takes.
   *
   * @param otherwise an answer given to a like question, where nobody answered this one
   */
  Optional<Taken> take(Question question, Supplier<Optional<Answer>> otherwise) {
    Optional<Answer> answer = Optional.ofNullable(byId.get(question.id())).or(otherwise);
    Optional<Taken> taken =
        answer.flatMap(
            a ->
                Choices.find(question.choices(), question.proposed(), a.answer())
                    .map(said -> new Taken(said, a)));
    answer.ifPresent(
        a -> note(question, a, taken.isPresent() ? AnswerUse.SETTLED : AnswerUse.NOT_A_CHOICE));
    return taken;
  }

  /** The question as it stays open, with what is wrong with an answer that did not settle it. */
  Question open(Question question) {
    Answer answer = byId.get(question.id());
    if (answer == null) {
      return question;
    }
    AnswerUse use = uses.get(question.id());
    boolean choice = use == null || !use.effect().equals(AnswerUse.NOT_A_CHOICE);
    if (choice) {
      note(question, answer, AnswerUse.NO_EFFECT);
    }
    String said =
        "The answer \"" + answer.answer() + "\" of " + answer.by() + ", " + answer.on() + ", ";
    return question.because(
        (question.why() + " " + said + (choice ? "does not settle it." : "is not a choice."))
            .strip());
  }

  private void note(Question question, Answer answer, String effect) {
    uses.put(
        question.id(),
        new AnswerUse(
            answer,
            question.kind(),
            question.document(),
            question.about(),
            question.question(),
            effect));
  }

  /** What became of every answer, by question. */
  List<AnswerUse> uses() {
    List<AnswerUse> all = new ArrayList<>();
    byId.forEach(
        (id, answer) -> {
          AnswerUse use = uses.get(id);
          all.add(
              use == null
                  ? new AnswerUse(answer, "", "", "", "", AnswerUse.NO_SUCH_QUESTION)
                  : use);
        });
    return all;
  }
}
