package rickyard.core.forage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
    Optional<Taken> leftOut = Optional.empty();
    List<Doubt> notes = new ArrayList<>(report.notes());
    reportedOn.filter(d -> d.isAfter(asOf)).ifPresent(d -> notes.add(future("report date", d)));
    for (int i = 0; i < notes.size(); i++) {
      Question question = question(report, -1, notes, i);
      Doubt note = notes.get(i);
      Optional<Taken> taken = answers.take(question, () -> layouts.find(received, note, List.of()));
      if (taken.isEmpty()) {
        shared.add(answers.open(question));
      } else if (saysNo(taken.get())) {
        leftOut = taken;
      } else if (notes.get(i).about().equals("date")) {
        Optional<LocalDate> day = Choices.day(taken.get().said()).filter(d -> !d.isAfter(asOf));
        if (day.isEmpty() && !taken.get().is(Choices.IGNORE_DATE)) {
          shared.add(answers.open(question));
        }
        reportedOn = day;
      }
    }
    return held(received, dated(report, reportedOn), shared, leftOut);
  }

  private List<Held> held(
      Received received, Report report, List<Question> shared, Optional<Taken> leftOut) {
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < report.samples().size(); i++) {
      Held one = sample(received, report, i);
      one.open.addAll(i == 0 ? shared : List.of());
      one.blocked |= !shared.isEmpty();
      leftOut.ifPresent(one::leaveOut);
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
      Question question = question(report, index, doubts, i);
      Optional<Taken> taken =
          answers.take(question, () -> layouts.find(received, doubt, held.sample.readings()));
      if (taken.filter(t -> isSettled(held, doubt, t)).isEmpty()) {
        left.add(doubt);
        held.open.add(answers.open(question));
        held.blocked |= blocks(held.sample, doubt);
      }
    }
    held.sample = with(held.sample, held.sample.sampledOn(), held.sample.readings(), left);
    return held;
  }

  /** A doubt that no reading carries and that names no analyte holds the whole sample. */
  private static boolean blocks(Sample sample, Doubt doubt) {
    return doubt.analytes().isEmpty()
        && sample.readings().stream().noneMatch(r -> isTouched(r, doubt));
  }

  private boolean isSettled(Held held, Doubt doubt, Taken taken) {
    if (doubt.about().equals("date")) {
      return isDateSettled(held, taken);
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
      Optional<Reading> now = answered.apply(reading, doubt, taken);
      settled &= now.isPresent();
      readings.add(now.orElse(reading));
    }
    held.sample = with(held.sample, held.sample.sampledOn(), readings, held.sample.doubts());
    if (!touched && saysNo(taken)) {
      held.leaveOut(taken);
    }
    return !touched || settled;
  }

  private boolean isDateSettled(Held held, Taken taken) {
    if (saysNo(taken)) {
      held.leaveOut(taken);
      return true;
    }
    Optional<LocalDate> day = Choices.day(taken.said()).filter(d -> !d.isAfter(asOf));
    if (day.isEmpty() && !taken.is(Choices.IGNORE_DATE)) {
      return false;
    }
    held.sample = with(held.sample, day, held.sample.readings(), held.sample.doubts());
    return true;
  }

  /**
   * A reading waits with the doubt's code; one that waits for something else may lack its basis,
   * its unit or its name besides, and is asked about that too.
   */
  static boolean isTouched(Reading reading, Doubt doubt) {
    List<String> analytes = doubt.analytes();
    if (!analytes.isEmpty() && !analytes.contains(reading.analyte().value())) {
      return false;
    }
    String code = doubt.code();
    boolean lacks =
        !reading.doubt().equals("left-out")
            && ((code.startsWith("basis-") && isBare(reading) && reading.rawBasis().isEmpty())
                || (isOfName(code) && !analytes.isEmpty()));
    return reading.doubt().equals(code) || lacks;
  }

  private static boolean isBare(Reading reading) {
    return reading.value().isEmpty() && !reading.doubt().isEmpty();
  }

  private static boolean isOfName(String code) {
    return code.equals("nsc-definition-unknown")
        || code.equals("sugar-not-defined")
        || code.equals("nitrate-form-unknown");
  }

  private static Doubt future(String name, LocalDate day) {
    return new Doubt(
        "date-in-future",
        "date",
        Optional.empty(),
        "The " + name + " " + day + " lies after today: which day is right?",
        List.of(Choices.DAY, Choices.IGNORE_DATE, Choices.LEAVE_OUT),
        "",
        "A report cannot be newer than the morning that reads it.");
  }

  static boolean saysNo(Taken taken) {
    return taken.is(Choices.LEAVE_OUT) || taken.is("no");
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

  private static Question question(Report report, int sample, List<Doubt> doubts, int place) {
    Doubt doubt = doubts.get(place);
    return new Question(
        id(report, sample, doubts, place),
        doubt.code(),
        report.document(),
        doubt.place(),
        doubt.about(),
        doubt.question(),
        doubt.choices(),
        doubt.proposed(),
        doubt.why());
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
        s.checks(),
        s.standing());
  }
}
