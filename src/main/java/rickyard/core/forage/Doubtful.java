package rickyard.core.forage;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

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
  private final Map<String, Optional<String>> kindsByWords = new HashMap<>();
  private final Set<String> telling;
  private final int longestTelling;

  Doubtful(AnswerBook answers, SampleKinds kinds, List<Lot> lots) {
    this.answers = answers;
    this.kinds = kinds;
    lots.forEach(l -> this.lots.put(l.id(), l));
    this.telling =
        this.lots.keySet().stream().filter(Doubtful::isTelling).collect(Collectors.toSet());
    this.longestTelling = telling.stream().mapToInt(String::length).max().orElse(0);
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
    return kind(material.isBlank() ? held.sample.label() : material);
  }

  /** A season's export repeats a few descriptions many times. */
  private Optional<String> kind(String words) {
    return kindsByWords.computeIfAbsent(words, kinds::find);
  }

  /** Lets a sample wait whose belonging is contradicted, unless a person said to take it. */
  void settle(Held held) {
    Lot lot = held.batch.isEmpty() ? lots.get(held.subject) : null;
    Optional<String> kind = kind(held.sample.material());
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
    Optional<String> own = kind(lot.material());
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
    Set<String> named = held.report.samples().size() > 1 ? Set.of() : lotsInFileName(held);
    if (named.isEmpty() || named.contains(held.subject)) {
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

  /** Lots whose id stands alone in the file's name, between characters of no word. */
  private Set<String> lotsInFileName(Held held) {
    String file = fileOf(held);
    Set<String> named = new TreeSet<>();
    for (int from = 0; from < file.length(); from++) {
      boolean begins = from == 0 || !Character.isLetterOrDigit(file.charAt(from - 1));
      int last = Math.min(file.length(), from + longestTelling);
      for (int to = from + 1; begins && to <= last; to++) {
        boolean ends = to == file.length() || !Character.isLetterOrDigit(file.charAt(to));
        if (ends && telling.contains(file.substring(from, to))) {
          named.add(file.substring(from, to));
        }
      }
    }
    return named;
  }

  /** Ids that may be dates or counters tell nothing in the name of a file. */
  private static boolean isTelling(String id) {
    return id.length() >= 3
        && id.codePoints().anyMatch(Character::isLetter)
        && id.chars().anyMatch(c -> c >= '0' && c <= '9');
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
