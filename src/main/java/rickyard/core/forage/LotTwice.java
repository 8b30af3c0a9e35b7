package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One lot twice in one document: with the same figures a repetition, with others a question. */
final class LotTwice {
  static final String KIND = "lot-twice";
  private static final String BOTH = "two samples of it";

  private final AnswerBook answers;

  LotTwice(AnswerBook answers) {
    this.answers = answers;
  }

  void settle(List<Held> all) {
    Map<String, List<Held>> groups = new TreeMap<>();
    for (Held held : all) {
      if (held.stands() && !held.subject.isEmpty()) {
        String key = String.join("\u001f", held.key.document(), held.subject, held.batch);
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(held);
      }
    }
    groups.values().stream().filter(g -> g.size() > 1).forEach(this::settleOne);
  }

  private void settleOne(List<Held> group) {
    List<Held> kept = new ArrayList<>();
    for (Held held : group) {
      if (kept.stream().anyMatch(k -> SameContent.exactly(k.sample, held.sample))) {
        held.stand(
            Standing.DUPLICATE, "same-content", "the same report holds the same figures twice");
      } else {
        kept.add(held);
      }
    }
    String difference = difference(kept);
    if (!difference.isEmpty()) {
      ask(kept, difference);
    }
  }

  private static String difference(List<Held> kept) {
    for (int i = 1; i < kept.size(); i++) {
      String words = SameContent.difference(kept.get(0).sample, kept.get(i).sample);
      if (!words.isEmpty()) {
        return words;
      }
    }
    return "";
  }

  private void ask(List<Held> kept, String difference) {
    Question question = question(kept, difference);
    Optional<Taken> taken = answers.take(question);
    for (Held held : kept) {
      if (taken.isEmpty()) {
        held.stand(Standing.QUARANTINED, KIND, "the report names the lot twice with other figures");
      } else if (taken.get().is(BOTH) || taken.get().is(held.name())) {
        held.note = "the report names the lot twice, answered " + taken.get().words();
      } else {
        held.leaveOut(taken.get());
      }
    }
    if (taken.isEmpty()) {
      kept.get(0).open.add(answers.open(question));
    }
  }

  private static Question question(List<Held> kept, String difference) {
    Held first = kept.get(0);
    List<String> parts = new ArrayList<>(List.of(KIND, first.key.document()));
    kept.forEach(h -> parts.add(Integer.toString(h.key.index())));
    List<String> choices = new ArrayList<>(kept.stream().map(Held::name).toList());
    choices.add(BOTH);
    choices.add(Choices.LEAVE_OUT);
    return new Question(
        QuestionId.of(parts.toArray(String[]::new)),
        KIND,
        first.key.document(),
        Optional.empty(),
        first.subject,
        "The report names "
            + first.subject
            + " for several samples with other figures: which is"
            + " it?",
        choices,
        "",
        difference);
  }
}
