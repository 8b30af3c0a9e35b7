package rickyard.core.forage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Holds the layout of each report against what is remembered: a new one is shown, one that changed
 * in a way that may give figures another meaning is asked about, and so is one that was misread
 * before. Reports of one morning are never held against each other.
 */
final class LayoutDesk {
  /** Doubts that already ask for what a grave change would ask. */
  private static final Set<String> ASKED_ANYWAY =
      Set.of(
          "basis-not-stated",
          "basis-contradiction",
          "column-not-known",
          "column-not-understood",
          "columns-swapped",
          "columns-same-basis",
          "unit-not-stated",
          "unit-contradiction",
          "unit-not-possible",
          "hint-contradicted");

  private static final String AS_FED_TO_DRY = "as fed / dry matter = DM";

  private final LayoutBook book;
  private final AnswerBook answers;
  private final LayoutAnswers given;
  private final LayoutReviews reviews;
  private final Map<String, List<String>> used = new TreeMap<>();
  private final SortedMap<String, LayoutSeen> seen = new TreeMap<>();

  LayoutDesk(List<Received> all, Unsettled unsettled, AnswerBook answers, Belonging belonging) {
    this.answers = answers;
    this.given = new LayoutAnswers(all, answers);
    this.reviews = new LayoutReviews(all, unsettled.decisions(), belonging);
    this.book = asReadNow(unsettled.layouts(), all);
  }

  /** What a better reader makes of the reports that the book rests on belongs to the book. */
  private static LayoutBook asReadNow(LayoutBook remembered, List<Received> all) {
    SortedMap<String, Layout> accepted = new TreeMap<>();
    all.stream()
        .map(Received::report)
        .filter(r -> remembered.isAccepted(r.document()))
        .forEach(r -> accepted.put(r.document(), r.layout()));
    return remembered.with(accepted);
  }

  /** The answer given for the layout; none after a change or where a figure was misread before. */
  Optional<Answer> find(Received received, Doubt doubt, List<Reading> readings) {
    Report report = received.report();
    if (!report.layout().isNamed()) {
      return Optional.empty();
    }
    Optional<Answer> answer =
        given
            .find(report, doubt, readings)
            .filter(a -> review(received).isEmpty() && !isChanged(report));
    answer.ifPresent(
        a ->
            used.computeIfAbsent(report.document(), d -> new ArrayList<>())
                .add(
                    "answer \""
                        + a.answer()
                        + "\" of "
                        + a.by()
                        + ", "
                        + a.on()
                        + " ("
                        + a.questionId()
                        + ") used for "
                        + doubt.about()));
    return answer;
  }

  private boolean isChanged(Report report) {
    return changes(report).stream().anyMatch(LayoutChange::isGrave);
  }

  private Optional<Layout> before(Layout now) {
    return book.find(now.id()).or(() -> book.nearest(now));
  }

  private List<LayoutChange> changes(Report report) {
    Layout now = report.layout();
    if (!now.isNamed() || now.isNone() || book.isAccepted(report.document())) {
      return List.of();
    }
    return before(now).map(known -> LayoutDrift.between(known, now)).orElse(List.of());
  }

  private List<String> review(Received received) {
    return book.isAccepted(received.report().document()) ? List.of() : reviews.before(received);
  }

  /** Lets the samples of a report wait where its layout is in question. */
  void hold(Received received, List<Held> held) {
    Report report = received.report();
    Layout now = report.layout();
    List<String> notes = new ArrayList<>();
    List<LayoutChange> changes = changes(report);
    changes.forEach(c -> notes.add(c.words()));
    List<String> asked =
        changes.stream().filter(c -> asks(c, report)).map(LayoutChange::words).toList();
    if (!asked.isEmpty()) {
      ask(LayoutQuestion.changed(report, before(now).orElse(now), asked), held);
    }
    List<String> misread = review(received);
    if (!misread.isEmpty()) {
      misread.forEach(m -> notes.add("misread before: " + m));
      ask(LayoutQuestion.misread(report, misread), held);
    }
    notes.addAll(used.getOrDefault(report.document(), List.of()));
    boolean remembered =
        !now.isNone() && held.stream().allMatch(h -> h.open.isEmpty() && !h.blocked && h.stands());
    seen.put(
        report.document(),
        new LayoutSeen(report.document(), now, state(report, changes), notes, remembered));
  }

  private String state(Report report, List<LayoutChange> changes) {
    Layout now = report.layout();
    if (now.isNone()) {
      return "none";
    }
    if (!changes.isEmpty()) {
      return "changed";
    }
    boolean known = book.isAccepted(report.document()) || book.find(now.id()).isPresent();
    return known ? "known" : "new";
  }

  private static boolean asks(LayoutChange change, Report report) {
    boolean askedAnyway =
        report.samples().stream()
            .flatMap(s -> s.doubts().stream())
            .anyMatch(d -> ASKED_ANYWAY.contains(d.code()));
    boolean proven = change.touches() == LayoutChange.Touches.COLUMN && areBasesProven(report);
    return change.isGrave() && !askedAnyway && !proven;
  }

  /** Two columns in the ratio of the dry matter on every line: their headings are right. */
  private static boolean areBasesProven(Report report) {
    return report.samples().stream()
        .allMatch(
            sample -> {
              List<Check> ratios =
                  sample.checks().stream().filter(c -> c.identity().equals(AS_FED_TO_DRY)).toList();
              return ratios.size() >= 3 && ratios.stream().allMatch(Check::holds);
            });
  }

  private void ask(Question question, List<Held> held) {
    Optional<Taken> taken = answers.take(question);
    if (taken.isPresent()) {
      taken.filter(DoubtDesk::saysNo).ifPresent(no -> held.forEach(h -> h.leaveOut(no)));
      return;
    }
    held.forEach(h -> h.blocked = true);
    held.get(0).open.add(answers.open(question));
  }

  /** How every document's layout stands, by document. */
  List<LayoutSeen> seen() {
    return List.copyOf(seen.values());
  }

  /** Several reports of one changed layout ask one question. */
  static void once(List<Question> questions) {
    Set<String> ids = new HashSet<>();
    questions.removeIf(q -> !ids.add(q.id()));
  }
}
