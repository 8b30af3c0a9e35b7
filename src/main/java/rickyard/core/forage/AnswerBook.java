package rickyard.core.forage;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The answers of the office by question; of several to one question the latest counts. */
final class AnswerBook {
  private final Map<String, Answer> byId = new TreeMap<>();

  AnswerBook(List<Answer> answers) {
    answers.stream()
        .sorted(Comparator.comparing(Answer::on))
        .filter(a -> !a.answer().isBlank())
        .forEach(a -> byId.put(a.questionId().strip(), a));
  }

  Optional<Answer> find(String questionId) {
    return Optional.ofNullable(byId.get(questionId));
  }
}
