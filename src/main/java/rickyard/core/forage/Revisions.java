package rickyard.core.forage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds which revision of each sample of one series counts, whatever the order of arrival. */
final class Revisions {
  private static final String STILL_STANDS = "still stands";
  private static final String WITHDRAWN = "withdrawn";

  private final AnswerBook answers;
  private final List<Question> questions;
  private final LocalDate asOf;

  Revisions(AnswerBook answers, List<Question> questions, LocalDate asOf) {
    this.answers = answers;
    this.questions = questions;
    this.asOf = asOf;
  }

  void settle(List<Held> series) {
    Precedence precedence = new Precedence(reports(series));
    List<List<Held>> strands = Strands.of(series);
    withdraw(strands, series);
    for (List<Held> strand : strands) {
      settleStrand(strand, precedence);
    }
    leftOutOfAmendment(strands, precedence);
  }

  private static List<Report> reports(List<Held> series) {
    Map<String, Report> byDocument = new LinkedHashMap<>();
    series.forEach(h -> byDocument.putIfAbsent(h.key.document(), h.report));
    return List.copyOf(byDocument.values());
  }

  /** A withdrawal that names none of the samples takes them all. */
  private static void withdraw(List<List<Held>> strands, List<Held> series) {
    for (Held held : series) {
      if (held.report.status() == ReportStatus.WITHDRAWN && isUnnamed(held)) {
        strands.stream().filter(s -> !s.contains(held)).forEach(s -> s.add(held));
      }
    }
  }

  private static boolean isUnnamed(Held held) {
    return held.sample.label().isBlank()
        && held.sample.labNo().isBlank()
        && held.report.samples().size() == 1;
  }

  private void settleStrand(List<Held> strand, Precedence precedence) {
    List<Held> distinct = withoutCopies(strand);
    List<Held> deciding =
        distinct.stream().filter(h -> h.report.status() != ReportStatus.PRELIMINARY).toList();
    if (deciding.isEmpty()) {
      distinct.forEach(this::preliminary);
      return;
    }
    distinct.stream().filter(h -> !deciding.contains(h)).forEach(Revisions::finalCame);
    Optional<Held> head = head(deciding, precedence).or(() -> askWhich(deciding));
    if (head.isEmpty()) {
      return;
    }
    for (Held held : deciding) {
      if (held != head.get()) {
        supersede(held, head.get());
      }
    }
    if (head.get().report.status() == ReportStatus.WITHDRAWN) {
      head.get()
          .stand(
              Standing.SUPERSEDED, "withdrawal", "withdraws the report; nothing takes its place");
    }
  }

  private static void finalCame(Held preliminary) {
    preliminary.stand(Standing.SUPERSEDED, "final-came", "the final report has come");
  }

  private static void supersede(Held old, Held head) {
    boolean withdrawn = head.report.status() == ReportStatus.WITHDRAWN;
    old.stand(
        Standing.SUPERSEDED,
        withdrawn ? "withdrawn" : "newer-revision",
        withdrawn ? "the laboratory withdrew it" : "a newer revision is in force");
    old.replacedBy = head.key.document();
  }

  private List<Held> withoutCopies(List<Held> strand) {
    List<Held> byFullness =
        strand.stream()
            .sorted(
                Comparator.<Held>comparingLong(h -> -h.settledReadings())
                    .thenComparing(h -> h.received, Received.ORDER)
                    .thenComparing(h -> h.key))
            .toList();
    List<Held> kept = new ArrayList<>();
    for (Held held : byFullness) {
      Optional<Held> original = kept.stream().filter(k -> isCopy(k, held)).findFirst();
      if (original.isPresent()) {
        held.stand(Standing.DUPLICATE, "same-content", "another file holds the same figures");
        held.replacedBy = original.get().key.document();
      } else {
        kept.add(held);
      }
    }
    return kept;
  }

  private static boolean isCopy(Held a, Held b) {
    return a.report.status() == b.report.status()
        && a.report.revision() == b.report.revision()
        && a.report.status() != ReportStatus.WITHDRAWN
        && Precedence.number(a.report.reportNo()).equals(Precedence.number(b.report.reportNo()))
        && Precedence.number(a.sample.label()).equals(Precedence.number(b.sample.label()))
        && SameContent.withinRounding(a.sample, b.sample);
  }

  private void preliminary(Held held) {
    held.stand(Standing.QUESTION, "preliminary", "preliminary: the final report is awaited");
    Question question =
        new Question(
            QuestionId.of("preliminary", held.key.document(), held.key.index() + ""),
            "preliminary",
            held.key.document(),
            Optional.empty(),
            held.sample.label().isBlank() ? "report" : held.sample.label(),
            "Preliminary report " + held.report.reportNo() + ": when does the final one come?",
            List.of(Choices.DAY, Choices.LEAVE_OUT),
            "",
            "A preliminary report never decides.");
    Optional<Taken> taken = answers.take(question);
    if (taken.filter(t -> t.is(Choices.LEAVE_OUT)).isPresent()) {
      held.leaveOut(taken.get());
      return;
    }
    Optional<LocalDate> day = taken.flatMap(t -> Choices.day(t.said()));
    if (day.filter(d -> !d.isBefore(asOf)).isPresent()) {
      held.stand(
          Standing.QUESTION,
          "preliminary",
          "preliminary: the final report is expected, " + taken.get().words());
      return;
    }
    questions.add(
        day.map(
                d ->
                    question.because("The final report was expected on " + d + "; it is not here."))
            .orElseGet(() -> answers.open(question)));
  }

  private Optional<Held> head(List<Held> deciding, Precedence precedence) {
    for (Held one : deciding) {
      boolean newest =
          deciding.stream().allMatch(o -> o == one || precedence.isNewer(one.report, o.report));
      if (newest) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  private static String whichId(List<Held> deciding) {
    List<String> keys =
        new ArrayList<>(
            deciding.stream().map(h -> h.key.document() + h.key.index()).sorted().toList());
    keys.add(0, "which-revision");
    return QuestionId.of(keys.toArray(String[]::new));
  }

  /** The revision that a person chose; empty if nobody has, and then it is asked. */
  private Optional<Held> askWhich(List<Held> deciding) {
    Question question = which(deciding);
    Optional<Taken> taken = answers.take(question);
    if (taken.isPresent()) {
      Optional<Held> chosen = deciding.stream().filter(h -> taken.get().is(h.name())).findFirst();
      if (chosen.isPresent()) {
        chosen.get().note = "chosen as the newer revision, " + taken.get().words();
      } else {
        deciding.forEach(h -> h.leaveOut(taken.get()));
      }
      return chosen;
    }
    for (Held held : deciding) {
      held.stand(
          Standing.QUESTION,
          "which-revision",
          "the same report with other figures: which is newer?");
    }
    questions.add(answers.open(question));
    return Optional.empty();
  }

  private static Question which(List<Held> deciding) {
    List<String> choices = new ArrayList<>(deciding.stream().map(Held::name).sorted().toList());
    choices.add(Choices.LEAVE_OUT);
    Held first = deciding.get(0);
    return new Question(
        whichId(deciding),
        "which-revision",
        "",
        Optional.empty(),
        "report " + first.report.reportNo(),
        "Report "
            + first.report.reportNo()
            + " came with different figures and nothing tells which is newer: which counts?",
        choices,
        "",
        "Neither revision, status, date nor a replaced number orders them. "
            + SameContent.difference(first.sample, deciding.get(1).sample));
  }

  /** A sample that an amended report no longer holds, though it replaces the sheet it stood on. */
  private void leftOutOfAmendment(List<List<Held>> strands, Precedence precedence) {
    Sheets sheets = Sheets.of(strands, precedence);
    strands.stream()
        .flatMap(List::stream)
        .filter(h -> h.stands() && sheets.isReplaced(h.report))
        .distinct()
        .toList()
        .forEach(this::askStillStands);
  }

  private void askStillStands(Held held) {
    Question question =
        new Question(
            QuestionId.of("still-stands", held.key.document(), held.key.index() + ""),
            "not-in-amendment",
            held.key.document(),
            Optional.empty(),
            held.sample.label(),
            "The amended report no longer holds sample \""
                + held.sample.label()
                + "\": does the earlier figure still stand?",
            List.of(STILL_STANDS, WITHDRAWN),
            "",
            "An amended report replaces the whole sheet or only a part of it.");
    Optional<Taken> taken = answers.take(question);
    if (taken.isEmpty()) {
      held.stand(Standing.QUESTION, "not-in-amendment", "the amended report no longer holds it");
      questions.add(answers.open(question));
    } else if (taken.get().is(WITHDRAWN)) {
      held.stand(
          Standing.SUPERSEDED,
          "withdrawn",
          "no longer in the amended report, " + taken.get().words());
    } else {
      held.note = "left out of the amendment, " + taken.get().words();
    }
  }
}
