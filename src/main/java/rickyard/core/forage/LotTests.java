package rickyard.core.forage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the samples that stand for one lot or batch into the analysis in force. */
final class LotTests {
  private static final String TOGETHER = "combine";
  private static final String RETEST = "retest";

  private final AnalysisMaker maker;
  private final Belonging belonging;
  private final AnswerBook answers;
  private final Corrections corrections;
  private final List<Question> questions;
  private final List<LotTest> seen = new ArrayList<>();

  LotTests(
      AnalysisMaker maker,
      Belonging belonging,
      AnswerBook answers,
      Corrections corrections,
      List<Question> questions) {
    this.maker = maker;
    this.belonging = belonging;
    this.answers = answers;
    this.corrections = corrections;
    this.questions = questions;
  }

  InForce inForce(String key, List<Held> held, WhyNone why) {
    String subject = key.substring(0, key.indexOf('\u001f'));
    String batch = key.substring(key.indexOf('\u001f') + 1);
    if (held.isEmpty()) {
      return none(subject, batch, why.of(subject), false);
    }
    List<Held> tests = held.stream().sorted(Comparator.comparing(h -> h.key)).toList();
    tests.forEach(h -> h.sample = corrections.apply(h, subject));
    boolean provisional = tests.stream().anyMatch(h -> h.provisional);
    List<AccountedAnalysis> made = tests.stream().map(h -> make(h, subject, batch)).toList();
    if (batch.isEmpty()) {
      for (int i = 0; i < tests.size(); i++) {
        seen.add(LotTest.of(tests.get(i), subject, made.get(i)));
      }
    }
    if (tests.size() == 1) {
      return one(tests.get(0), made.get(0), provisional);
    }
    String disagreement = disagreement(made, isSameBag(tests));
    if (disagreement.isEmpty()) {
      return together(tests, made, provisional);
    }
    return disputed(subject, batch, tests, made, disagreement, provisional);
  }

  /** Every test of a lot that was looked at, sorted by lot and key: also those that disagree. */
  List<LotTest> seen() {
    return seen.stream()
        .sorted(Comparator.comparing(LotTest::lot).thenComparing(LotTest::key))
        .toList();
  }

  private static InForce none(String subject, String batch, String why, boolean provisional) {
    return new InForce(subject, batch, Optional.empty(), List.of(), why, provisional);
  }

  private static InForce one(Held held, AccountedAnalysis made, boolean provisional) {
    return new InForce(
        held.subject,
        held.batch,
        Optional.of(made),
        List.of(held.key),
        held.note.isEmpty()
            ? "report " + held.report.reportNo()
            : "report " + held.report.reportNo() + "; " + held.note,
        provisional);
  }

  private AccountedAnalysis make(Held held, String subject, String batch) {
    Optional<Lot> lot = batch.isEmpty() ? belonging.findLot(subject) : Optional.empty();
    Subject target =
        lot.map(l -> Subject.ofLot(l, held.sample.material()))
            .orElseGet(() -> unregistered(held, subject, batch));
    return maker.make(held.sample, target);
  }

  private static Subject unregistered(Held held, String subject, String batch) {
    return held.provisional
        ? new Subject(
            subject,
            batch,
            MaterialClass.of(held.sample.material(), OptionalDouble.empty()),
            java.util.OptionalInt.empty())
        : Subject.ofBatch(subject, batch);
  }

  private static String disagreement(List<AccountedAnalysis> made, boolean sameBag) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < made.size(); i++) {
      for (int j = i + 1; j < made.size(); j++) {
        String found = Combining.disagreement(made.get(i), made.get(j), sameBag);
        if (!found.isEmpty()) {
          words.add(found);
        }
      }
    }
    return String.join("; ", words);
  }

  private InForce together(List<Held> tests, List<AccountedAnalysis> made, boolean provisional) {
    for (Held held : tests) {
      held.stand(Standing.SUPERSEDED, "combined", "combined with another test of the lot");
    }
    Held first = tests.get(0);
    return new InForce(
        first.subject,
        first.batch,
        Optional.of(Combining.combine(made, isSameBag(tests), maker.sumCorrelation())),
        tests.stream().map(h -> h.key).toList(),
        tests.size() + " tests that agree, combined",
        provisional);
  }

  /** Samples of one day count as one bag: only the laboratories' errors are independent then. */
  private static boolean isSameBag(List<Held> tests) {
    Optional<LocalDate> day = tests.get(0).sample.sampledOn();
    return day.isPresent() && tests.stream().allMatch(h -> h.sample.sampledOn().equals(day));
  }

  private InForce disputed(
      String subject,
      String batch,
      List<Held> tests,
      List<AccountedAnalysis> made,
      String disagreement,
      boolean provisional) {
    Question question = question(subject, batch, tests, disagreement);
    Optional<Taken> taken = answers.take(question);
    if (taken.filter(t -> t.is(TOGETHER)).isPresent()) {
      return noted(together(tests, made, provisional), taken.get());
    }
    for (int i = 0; i < tests.size(); i++) {
      String name = tests.get(i).name();
      if (taken.filter(t -> t.is(name)).isPresent()) {
        return noted(chosen(tests, i, made.get(i), provisional), taken.get());
      }
    }
    for (Held held : tests) {
      held.stand(
          Standing.QUARANTINED, "tests-disagree", "two tests of the lot disagree: " + disagreement);
    }
    if (taken.isEmpty()) {
      questions.add(answers.open(question));
    }
    String why = "two tests of the lot disagree: " + disagreement;
    return none(
        subject,
        batch,
        taken.map(t -> why + "; a retest is awaited, " + t.words()).orElse(why),
        provisional);
  }

  private static InForce noted(InForce entry, Taken taken) {
    return new InForce(
        entry.subject(),
        entry.batch(),
        entry.analysis(),
        entry.from(),
        entry.why() + "; answered " + taken.words(),
        entry.provisional());
  }

  private static InForce chosen(
      List<Held> tests, int index, AccountedAnalysis made, boolean provisional) {
    Held head = tests.get(index);
    for (Held held : tests) {
      if (held != head) {
        held.stand(Standing.SUPERSEDED, "other-test-chosen", "the office chose the other test");
        held.replacedBy = head.key.document();
      }
    }
    return one(head, made, provisional);
  }

  private static Question question(
      String subject, String batch, List<Held> tests, String disagreement) {
    List<String> parts = new ArrayList<>(List.of("tests-disagree", subject, batch));
    tests.forEach(h -> parts.add(h.key.document() + h.key.index()));
    List<String> choices = new ArrayList<>(tests.stream().map(Held::name).toList());
    choices.add(TOGETHER);
    choices.add(RETEST);
    return new Question(
        QuestionId.of(parts.toArray(String[]::new)),
        "tests-disagree",
        "",
        Optional.empty(),
        subject,
        "Two tests of " + subject + " disagree (" + disagreement + "): which counts?",
        choices,
        RETEST,
        "They differ by more than twice their joint standard uncertainty; never pick the nicer one.");
  }
}
