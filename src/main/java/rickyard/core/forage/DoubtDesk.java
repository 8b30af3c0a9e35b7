package rickyard.core.forage;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Puts the doubts of reports and samples before the answers: what is answered is applied. */
final class DoubtDesk {
  private final AnswerBook answers;
  private final LayoutDesk layouts;
  private final AnsweredReading answered;
  private final LocalDate asOf;

  DoubtDesk(
      AnswerBook answers, LayoutDesk layouts, Map<AnalyteCode, Analyte> analytes, LocalDate asOf) {
    this.answers = answers;
    this.layouts = layouts;
    this.answered = new AnsweredReading(analytes);
    this.asOf = asOf;
  }

  /** The report's samples with answers applied and their open questions. */
  List<Held> open(Received received) {
    Report report = received.report();
    List<Question> shared = new ArrayList<>();
    Optional<LocalDate> reportedOn = report.reportedOn();
    boolean leftOut = false;
    List<Doubt> notes = new ArrayList<>(report.notes());
    reportedOn.filter(d -> d.isAfter(asOf)).ifPresent(d -> notes.add(future("report date", d)));
    for (int i = 0; i < notes.size(); i++) {
      Doubt note = notes.get(i);
      String id = id(report, -1, notes, i);
      Optional<Answer> answer = answers.find(id).or(() -> layouts.find(received, note, List.of()));
      Optional<LocalDate> day = answer.flatMap(DoubtDesk::date);
      if (day.filter(d -> !d.isAfter(asOf)).isPresent()) {
        reportedOn = day;
      } else if (answer.filter(a -> saysNo(a)).isPresent()) {
        leftOut = true;
      } else if (answer.filter(DoubtDesk::saysYes).isPresent()) {
        reportedOn = reportedOn.filter(d -> !d.isAfter(asOf));
      } else {
        shared.add(question(id, report, note, answer));
      }
    }
    Report dated = dated(report, reportedOn);
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < report.samples().size(); i++) {
      Held one = sample(received, dated, i);
      one.open.addAll(i == 0 ? shared : List.of());
      one.blocked |= !shared.isEmpty();
      if (leftOut) {
        one.stand(Standing.QUARANTINED, "left-out", "left out by an answer");
      }
      held.add(one);
    }
    return held;
  }

  private Held sample(Received received, Report report, int index) {
    Sample sample = report.samples().get(index);
    Held held = new Held(received, report, index, sample);
    List<Doubt> doubts = new ArrayList<>(sample.doubts());
    sample
        .sampledOn()
        .filter(d -> d.isAfter(asOf))
        .ifPresent(d -> doubts.add(future("day of sampling", d)));
    List<Doubt> left = new ArrayList<>();
    for (int i = 0; i < doubts.size(); i++) {
      Doubt doubt = doubts.get(i);
      String id = id(report, index, doubts, i);
      Optional<Answer> answer =
          answers.find(id).or(() -> layouts.find(received, doubt, held.sample.readings()));
      if (!isSettled(held, doubt, answer)) {
        left.add(doubt);
        held.open.add(question(id, report, doubt, answer));
        held.blocked |= blocks(held.sample, doubt);
      }
    }
    held.sample = with(held.sample, held.sample.sampledOn(), held.sample.readings(), left);
    return held;
  }

  /** A doubt that no reading carries and that names no analyte holds the whole sample. */
  private static boolean blocks(Sample sample, Doubt doubt) {
    return !doubt.about().matches("[A-Z][A-Z0-9_]*")
        && sample.readings().stream().noneMatch(r -> r.doubt().equals(doubt.code()));
  }

  private boolean isSettled(Held held, Doubt doubt, Optional<Answer> answer) {
    if (answer.isEmpty()) {
      return false;
    }
    Optional<LocalDate> day = date(answer.get());
    if (doubt.about().equals("date")) {
      return isDateSettled(held, answer.get(), day);
    }
    List<Reading> readings = new ArrayList<>();
    boolean touched = false;
    boolean settled = true;
    for (Reading reading : held.sample.readings()) {
      if (!isTouched(reading, doubt)) {
        readings.add(reading);
        continue;
      }
      touched = true;
      Optional<Reading> now = answered.apply(reading, doubt, answer.get());
      settled &= now.isPresent();
      readings.add(now.orElse(reading));
    }
    held.sample = with(held.sample, held.sample.sampledOn(), readings, held.sample.doubts());
    if (touched) {
      return settled;
    }
    if (saysNo(answer.get())) {
      held.stand(Standing.QUARANTINED, "left-out", "left out by an answer");
    }
    return saysNo(answer.get()) || saysYes(answer.get());
  }

  private boolean isDateSettled(Held held, Answer answer, Optional<LocalDate> day) {
    if (saysNo(answer)) {
      held.stand(Standing.QUARANTINED, "left-out", "left out by an answer");
      return true;
    }
    boolean fits = day.filter(d -> !d.isAfter(asOf)).isPresent();
    if (fits || saysYes(answer)) {
      Optional<LocalDate> known =
          fits ? day : held.sample.sampledOn().filter(d -> !d.isAfter(asOf));
      held.sample = with(held.sample, known, held.sample.readings(), held.sample.doubts());
      return true;
    }
    return false;
  }

  static boolean isTouched(Reading reading, Doubt doubt) {
    return reading.doubt().equals(doubt.code())
        && (!doubt.about().matches("[A-Z][A-Z0-9_]*")
            || reading.analyte().value().equals(doubt.about()));
  }

  private static Doubt future(String name, LocalDate day) {
    return new Doubt(
        "date-in-future",
        "date",
        Optional.empty(),
        "The " + name + " " + day + " lies after today: which day is right?",
        List.of("ignore the date", "leave out"),
        "",
        "A report cannot be newer than the morning that reads it.");
  }

  static boolean saysYes(Answer answer) {
    String low = answer.answer().strip().toLowerCase(Locale.ROOT);
    return AnsweredReading.isYes(low) || low.equals("ignore the date");
  }

  static boolean saysNo(Answer answer) {
    return AnsweredReading.isLeaveOut(answer.answer().strip().toLowerCase(Locale.ROOT));
  }

  private static Optional<LocalDate> date(Answer answer) {
    try {
      return Optional.of(LocalDate.parse(answer.answer().strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The n-th doubt of its code and matter keeps its id when others come or go. */
  static String id(Report report, int sample, List<Doubt> doubts, int place) {
    Doubt doubt = doubts.get(place);
    long nth =
        doubts.subList(0, place).stream()
            .filter(d -> d.code().equals(doubt.code()) && d.about().equals(doubt.about()))
            .count();
    return QuestionId.of(
        "doubt",
        report.document(),
        Integer.toString(sample),
        doubt.code(),
        doubt.about(),
        Long.toString(nth));
  }

  private static Question question(String id, Report report, Doubt doubt, Optional<Answer> unused) {
    String why =
        unused
            .map(a -> doubt.why() + " The answer \"" + a.answer() + "\" does not settle it.")
            .orElse(doubt.why());
    return new Question(
        id,
        doubt.code(),
        report.document(),
        doubt.place(),
        doubt.about(),
        doubt.question(),
        doubt.choices(),
        doubt.proposed(),
        why.strip());
  }

  private static Report dated(Report r, Optional<LocalDate> reportedOn) {
    return new Report(
        r.document(),
        r.lab(),
        r.reportNo(),
        r.revision(),
        r.replaces(),
        r.status(),
        reportedOn,
        r.samples(),
        r.notes(),
        r.layout());
  }

  static Sample with(
      Sample s, Optional<LocalDate> sampledOn, List<Reading> readings, List<Doubt> doubts) {
    return new Sample(
        s.label(),
        s.batch(),
        s.labNo(),
        s.material(),
        sampledOn,
        s.cores(),
        readings,
        doubts,
        s.checks());
  }
}
