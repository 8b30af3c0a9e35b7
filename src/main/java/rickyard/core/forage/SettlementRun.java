package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** One run of a settlement; used once. */
final class SettlementRun {
  private final Unsettled unsettled;
  private final AnswerBook answers;
  private final Belonging belonging;
  private final Doubtful doubtful;
  private final Corrections corrections;
  private final LotTests tests;
  private final Map<AnalyteCode, Analyte> analytes;
  private final List<Question> questions = new ArrayList<>();

  SettlementRun(
      Unsettled unsettled,
      AnalysisMaker maker,
      Map<AnalyteCode, Analyte> analytes,
      SampleKinds kinds) {
    this.unsettled = unsettled;
    this.analytes = analytes;
    this.answers = new AnswerBook(unsettled.answers());
    this.belonging = new Belonging(unsettled.lots(), unsettled.batches(), answers);
    this.doubtful = new Doubtful(answers, kinds, unsettled.lots());
    this.corrections = new Corrections(unsettled.decisions());
    this.tests = new LotTests(maker, belonging, answers, corrections, questions);
  }

  Settled run() {
    LayoutDesk layouts = new LayoutDesk(distinct(), unsettled, answers, belonging);
    DoubtDesk desk = new DoubtDesk(answers, layouts, analytes, unsettled.asOf());
    List<Held> all = new ArrayList<>();
    for (Received received : distinct()) {
      List<Held> held = desk.open(received);
      layouts.hold(received, held);
      all.addAll(held);
    }
    Revisions revisions = new Revisions(answers, questions, unsettled.asOf());
    Series.of(all).forEach(revisions::settle);
    withoutCopies(all);
    all.forEach(this::belong);
    new LotTwice(answers).settle(all);
    List<InForce> inForce = inForce(all);
    all.stream().filter(SettlementRun::asks).forEach(h -> questions.addAll(h.open));
    questions.sort(Comparator.comparing(Question::id));
    LayoutDesk.once(questions);
    return new Settled(
        all.stream().map(Held::settled).sorted(Comparator.comparing(SettledSample::key)).toList(),
        Outcomes.of(all),
        questions,
        inForce,
        Outcomes.reopened(all, unsettled.decisions()),
        answers.uses(),
        corrections.made(),
        layouts.seen(),
        tests.seen());
  }

  /** Copies, replaced and left-out samples ask nothing: nobody needs the answer. */
  private static boolean asks(Held held) {
    return held.standing != Standing.DUPLICATE
        && !(held.standing == Standing.SUPERSEDED && !held.reasonCode.equals("combined"))
        && !held.reasonCode.equals("left-out");
  }

  private List<Received> distinct() {
    SortedMap<String, Received> byDocument = new TreeMap<>();
    unsettled.reports().stream()
        .sorted(Received.ORDER)
        .forEach(r -> byDocument.putIfAbsent(r.report().document(), r));
    return byDocument.values().stream().sorted(Received.ORDER).toList();
  }

  /** The same figures under another number or none are a copy, not a second test. */
  private static void withoutCopies(List<Held> all) {
    List<Held> standing =
        all.stream()
            .filter(Held::stands)
            .sorted(
                Comparator.<Held, Boolean>comparing(h -> h.report.reportNo().isBlank())
                    .thenComparingLong(h -> -h.settledReadings())
                    .thenComparing(h -> h.received, Received.ORDER)
                    .thenComparing(h -> h.key))
            .toList();
    Map<String, List<Held>> byName = new HashMap<>();
    for (Held held : standing) {
      String name = held.sample.label().strip() + "\u001f" + held.sample.batch().strip();
      byName.computeIfAbsent(name, n -> new ArrayList<>(1)).add(held);
    }
    byName.values().forEach(SettlementRun::withoutCopiesOfOneName);
  }

  private static void withoutCopiesOfOneName(List<Held> named) {
    if (named.stream().map(h -> h.key.document()).distinct().count() < 2) {
      return;
    }
    List<Held> kept = new ArrayList<>();
    for (Held held : named) {
      Optional<Held> original = kept.stream().filter(k -> isCopy(k, held)).findFirst();
      if (original.isPresent()) {
        held.stand(Standing.DUPLICATE, "same-content", "another file holds the same figures");
        held.replacedBy = original.get().key.document();
      } else {
        kept.add(held);
      }
    }
  }

  private static boolean isCopy(Held a, Held b) {
    return !a.key.document().equals(b.key.document()) && SameContent.exactly(a.sample, b.sample);
  }

  private void belong(Held held) {
    if (!held.stands()) {
      belonging.find(held);
      return;
    }
    if (doubtful.isSetApart(held, belonging.isCertain(held))) {
      return;
    }
    belonging.settle(held);
    if (held.stands() && held.blocked) {
      held.stand(Standing.QUESTION, "open-doubt", "the report waits for an answer");
    }
    if (held.stands()) {
      doubtful.settle(held);
    }
  }

  private List<InForce> inForce(List<Held> all) {
    SortedMap<String, List<Held>> bySubject = new TreeMap<>();
    for (Held held : all) {
      if (!held.subject.isEmpty() && held.stands()) {
        bySubject
            .computeIfAbsent(held.subject + "\u001f" + held.batch, k -> new ArrayList<>())
            .add(held);
      }
    }
    for (Lot lot : unsettled.lots()) {
      bySubject.putIfAbsent(lot.id() + "\u001f", List.of());
    }
    List<InForce> inForce = new ArrayList<>();
    WhyNone why = WhyNone.of(all);
    bySubject.forEach((key, held) -> inForce.add(tests.inForce(key, held, why)));
    return inForce;
  }
}
