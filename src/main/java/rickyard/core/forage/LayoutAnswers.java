package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Answers that the office gave for a layout: the same question of another report of that layout is
 * answered with it. Only what the layout leaves open can be answered so, never a figure.
 */
final class LayoutAnswers {
  private static final Set<String> OF_BASIS =
      Set.of(
          "basis-not-stated", "basis-contradiction", "column-not-known", "column-not-understood");
  private static final Set<String> OF_LINES =
      Set.of(
          "unit-not-stated",
          "unit-contradiction",
          "unit-not-possible",
          "nsc-definition-unknown",
          "sugar-not-defined",
          "nitrate-form-unknown");
  private static final String DATE = "date-ambiguous";

  private record Given(Answer answer, Report report, Doubt doubt, Set<AnalyteCode> analytes) {}

  private final Map<String, List<Given>> given = new TreeMap<>();

  LayoutAnswers(List<Received> all, AnswerBook answers) {
    for (Received received : all) {
      Report report = received.report();
      if (report.layout().isNamed()) {
        take(report, -1, report.notes(), List.of(), answers);
        for (int i = 0; i < report.samples().size(); i++) {
          Sample sample = report.samples().get(i);
          take(report, i, sample.doubts(), sample.readings(), answers);
        }
      }
    }
  }

  private void take(
      Report report, int sample, List<Doubt> doubts, List<Reading> readings, AnswerBook answers) {
    for (int i = 0; i < doubts.size(); i++) {
      Doubt doubt = doubts.get(i);
      Optional<Answer> answer =
          answers
              .find(DoubtDesk.id(report, sample, doubts, i))
              .filter(Answer::isForLayout)
              .filter(a -> isOfLayout(doubt) && choice(doubt, a.answer()) >= 0);
      answer.ifPresent(
          a ->
              given
                  .computeIfAbsent(key(report, doubt), k -> new ArrayList<>())
                  .add(new Given(a, report, doubt, touched(doubt, readings))));
    }
  }

  private static boolean isOfLayout(Doubt doubt) {
    return OF_BASIS.contains(doubt.code())
        || OF_LINES.contains(doubt.code())
        || doubt.code().equals(DATE);
  }

  private static String key(Report report, Doubt doubt) {
    return report.layout().id() + " " + doubt.code();
  }

  private static Set<AnalyteCode> touched(Doubt doubt, List<Reading> readings) {
    Set<AnalyteCode> touched = new TreeSet<>();
    readings.stream()
        .filter(r -> DoubtDesk.isTouched(r, doubt))
        .forEach(r -> touched.add(r.analyte()));
    return touched;
  }

  private static int choice(Doubt doubt, String answer) {
    String said = answer.strip().toLowerCase(Locale.ROOT);
    return doubt.choices().stream().map(c -> c.toLowerCase(Locale.ROOT)).toList().indexOf(said);
  }

  /**
   * The answer of another report of the same layout; empty if there is none, or if several
   * contradict each other.
   */
  Optional<Answer> find(Report report, Doubt doubt, List<Reading> readings) {
    if (!given.containsKey(key(report, doubt))) {
      return Optional.empty();
    }
    Set<AnalyteCode> touched = touched(doubt, readings);
    List<Answer> fitting =
        given.getOrDefault(key(report, doubt), List.of()).stream()
            .filter(g -> isSame(g.report(), report) && covers(g, doubt, touched))
            .map(g -> translated(g, report, doubt))
            .flatMap(Optional::stream)
            .toList();
    long distinct =
        fitting.stream().map(a -> a.answer().strip().toLowerCase(Locale.ROOT)).distinct().count();
    return distinct == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  /**
   * The same fields in the head, some of them perhaps blank, and nothing that gives a figure
   * another meaning.
   */
  private static boolean isSame(Report answered, Report now) {
    Layout before = answered.layout();
    boolean sameHead =
        before.fields().containsAll(now.layout().fields())
            || now.layout().fields().containsAll(before.fields());
    return sameHead
        && LayoutDrift.between(before, now.layout()).stream().noneMatch(LayoutChange::isGrave);
  }

  /** A basis said of all figures holds for one more; a unit or a name only for its own lines. */
  private static boolean covers(Given given, Doubt doubt, Set<AnalyteCode> touched) {
    boolean ofAll = OF_BASIS.contains(doubt.code()) && given.analytes().size() > 1;
    return ofAll || given.analytes().containsAll(touched);
  }

  private static Optional<Answer> translated(Given given, Report report, Doubt doubt) {
    int at = choice(given.doubt(), given.answer().answer());
    boolean date = doubt.code().equals(DATE);
    if (date && given.doubt().choices().size() != doubt.choices().size()) {
      return Optional.empty();
    }
    String said = date ? doubt.choices().get(at) : given.answer().answer();
    if (choice(doubt, said) < 0) {
      return Optional.empty();
    }
    Answer a = given.answer();
    String question = a.questionId().strip() + " for layout " + report.layout().name();
    return Optional.of(new Answer(question, said, a.by(), a.on(), a.note(), a.scope()));
  }
}
