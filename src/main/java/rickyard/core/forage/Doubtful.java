package rickyard.core.forage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What speaks against a sample that carries a lot's name: it is no hay, of another material, older
 * than the lot, or its file is called after another lot. Each is a question.
 */
final class Doubtful {
  static final String SET_APART = "set-apart";
  private static final String TAKE_IT = "take it";
  private static final Set<String> OF_BAGS = Set.of("feed", "grain");

  private final AnswerBook answers;
  private final SampleKinds kinds;
  private final Map<String, Lot> lots = new TreeMap<>();

  Doubtful(AnswerBook answers, SampleKinds kinds, List<Lot> lots) {
    this.answers = answers;
    this.kinds = kinds;
    lots.forEach(l -> this.lots.put(l.id(), l));
  }

  /** Sets a sample of water, soil, grain … apart, unless its label is a lot's or a batch's own. */
  boolean isSetApart(Held held, boolean isCertain) {
    Optional<String> kind = kind(held);
    if (isCertain || kind.filter(k -> !SampleKinds.isStored(k)).isEmpty()) {
      return false;
    }
    held.stand(
        Standing.QUARANTINED,
        SET_APART,
        "a sample of " + kind.get() + ": kept, never judged as hay");
    return true;
  }

  private Optional<String> kind(Held held) {
    String material = held.sample.material();
    return kinds.find(material.isBlank() ? held.sample.label() : material);
  }

  /** Lets a sample wait whose belonging is contradicted, unless a person said to take it. */
  void settle(Held held) {
    Lot lot = held.batch.isEmpty() ? lots.get(held.subject) : null;
    Optional<String> kind = kinds.find(held.sample.material());
    if (kind.filter(k -> isWrongKind(k, lot, held)).isPresent()) {
      ask(
          held,
          "sample-kind",
          "The report calls the sample \""
              + held.sample.material()
              + "\": is it "
              + held.subject
              + "?",
          "the report says that the sample is " + kind.get());
      return;
    }
    if (lot == null) {
      return;
    }
    Optional<String> own = kinds.find(lot.material());
    if (kind.isPresent() && own.isPresent() && !kind.equals(own)) {
      ask(
          held,
          "material-differs",
          "The report calls the sample \""
              + held.sample.material()
              + "\", the register keeps lot "
              + lot.id()
              + " as "
              + lot.material()
              + ": is it this lot?",
          "material of report and register differ");
    }
    if (held.stands() && isOlder(held, lot)) {
      ask(
          held,
          "older-than-lot",
          "The sample was taken before lot " + lot.id() + " was harvested: is it this lot?",
          "sampled before the lot was harvested");
    }
    if (held.stands()) {
      fileName(held);
    }
  }

  private static boolean isWrongKind(
      String kind, @org.jspecify.annotations.Nullable Lot lot, Held held) {
    boolean bag = lot == null && !held.provisional;
    return !SampleKinds.isStored(kind) && !(bag && OF_BAGS.contains(kind));
  }

  private static boolean isOlder(Held held, Lot lot) {
    Optional<LocalDate> sampled = held.sample.sampledOn();
    return lot.harvestedOn().flatMap(h -> sampled.filter(s -> s.isBefore(h))).isPresent();
  }

  private void ask(Held held, String kind, String words, String reason) {
    Question question =
        question(held, kind, words, List.of(TAKE_IT, Choices.LEAVE_OUT), Choices.LEAVE_OUT, reason);
    Optional<Taken> taken = answers.take(question);
    if (taken.isEmpty()) {
      held.stand(Standing.QUESTION, kind, reason);
      held.open.add(answers.open(question));
    } else if (taken.get().is(Choices.LEAVE_OUT)) {
      held.leaveOut(taken.get());
    } else {
      held.note = reason + ", taken all the same, " + taken.get().words();
    }
  }

  /** A report of one sample whose file is called after another lot than the one it names. */
  private void fileName(Held held) {
    Set<String> named = lotsInFileName(held);
    if (held.report.samples().size() > 1 || named.isEmpty() || named.contains(held.subject)) {
      return;
    }
    List<String> choices = new java.util.ArrayList<>(List.of(held.subject));
    choices.addAll(named);
    choices.add(Choices.LEAVE_OUT);
    String reason =
        "the file is called after "
            + String.join(", ", named)
            + ", the report names "
            + held.subject;
    Question question =
        question(
            held,
            "lot-in-file-name",
            "The file \""
                + fileOf(held)
                + "\" is called after "
                + String.join(", ", named)
                + ", but the report inside names "
                + held.subject
                + ": which lot is it?",
            choices,
            "",
            "One of the two names is wrong; whoever took the sample knows.");
    Optional<Taken> taken = answers.take(question);
    if (taken.isEmpty()) {
      held.stand(Standing.QUESTION, "lot-in-file-name", reason);
      held.open.add(answers.open(question));
    } else if (taken.get().is(Choices.LEAVE_OUT)) {
      held.leaveOut(taken.get());
    } else {
      held.subject = taken.get().said();
      held.note = reason + ", answered " + taken.get().words();
    }
  }

  private static String fileOf(Held held) {
    String path = held.received.path();
    return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('!')) + 1);
  }

  /**
   * Lots whose id stands alone in the file's name; ids that may be dates or counters do not count.
   */
  private Set<String> lotsInFileName(Held held) {
    String file = fileOf(held);
    Set<String> named = new TreeSet<>();
    for (String id : lots.keySet()) {
      boolean telling = id.length() >= 3 && id.matches(".*\\p{L}.*") && id.matches(".*[0-9].*");
      if (telling && isApart(file, id)) {
        named.add(id);
      }
    }
    return named;
  }

  private static boolean isApart(String file, String id) {
    int at = file.indexOf(id);
    while (at >= 0) {
      int end = at + id.length();
      boolean before = at > 0 && Character.isLetterOrDigit(file.charAt(at - 1));
      boolean after = end < file.length() && Character.isLetterOrDigit(file.charAt(end));
      if (!before && !after) {
        return true;
      }
      at = file.indexOf(id, at + 1);
    }
    return false;
  }

  private static Question question(
      Held held, String kind, String words, List<String> choices, String proposed, String why) {
    return new Question(
        QuestionId.of(kind, held.key.document(), held.key.index() + ""),
        kind,
        held.key.document(),
        Optional.empty(),
        held.subject,
        words,
        choices,
        proposed,
        why);
  }
}
