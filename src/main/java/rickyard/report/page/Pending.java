package rickyard.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Words;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.QuestionRow;
import rickyard.report.view.VerdictRow;

/** What could not be judged, and what would settle it. */
public final class Pending {
  /** A question with the row that answers it. */
  public record Question(
      String id,
      String question,
      String about,
      String where,
      String why,
      List<Choice> choices,
      String proposed,
      String answerRow) {}

  /** A choice as it is typed, and what it means; empty where it says that itself. */
  public record Choice(String typed, String words) {}

  /** Of a choice that names a report: what tells files of one name apart. */
  private static final Pattern REPORT = Pattern.compile(".+ \\([0-9a-f]{6}\\)");

  /** Something that waits: where on the page, its name, why. */
  public record Waiting(String anchor, String name, String why) {}

  private Pending() {}

  static Listed<Question> questions(MorningView view) {
    String day = view.asOf().toString();
    return Listed.first(view.questions(), question -> question(question, day), "questions.csv");
  }

  private static Question question(QuestionRow row, String day) {
    String id = Harmless.line(row.questionId());
    String proposed = Harmless.line(row.proposed());
    String answer = proposed.isEmpty() ? "ANSWER" : quoted(proposed);
    return new Question(
        id,
        words(row),
        about(row),
        Harmless.line(row.part().isBlank() ? row.file() : row.file() + ", " + row.part()),
        Plain.sentence(row.why()),
        Arrays.stream(row.choices().split("\\|", -1))
            .map(Harmless::line)
            .filter(choice -> !choice.isEmpty())
            .map(Pending::choice)
            .toList(),
        proposed,
        quoted(id) + "," + answer + ",YOUR NAME," + day + ",");
  }

  /** Codes of analytes stand only in questions about figures; a lot may be called K. */
  private static String words(QuestionRow row) {
    return isOfLots(row) ? Plain.line(row.question()) : Plain.figures(row.question());
  }

  private static String about(QuestionRow row) {
    return isOfLots(row) ? Harmless.line(row.about()) : Plain.figures(row.about());
  }

  private static boolean isOfLots(QuestionRow row) {
    return row.kind().startsWith("lot") || row.kind().contains("test") || row.file().isBlank();
  }

  private static Choice choice(String typed) {
    String words =
        REPORT.matcher(typed).matches()
            ? "this test counts; the brackets tell files of one name apart"
            : Words.find("choice", typed).orElse("");
    return new Choice(typed, words);
  }

  private static String quoted(String field) {
    boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == ';');
    return plain ? field : "\"" + field.replace("\"", "\"\"") + "\"";
  }

  static List<Waiting> horses(MorningView view, Anchors anchors) {
    return view.horses().stream()
        .filter(horse -> horse.priority() == Priority.ASK)
        .map(horse -> waiting(view, horse, anchors))
        .toList();
  }

  private static Waiting waiting(MorningView view, HorseAdvice horse, Anchors anchors) {
    return new Waiting(
        anchors.horse(horse.horse()),
        Names.horse(view, horse.horse()),
        Plain.sentence(Changes.reason(view, horse)));
  }

  /** Lots with a limit that could not be judged, with the first reason of each group. */
  static Listed<Waiting> lots(MorningView view, Anchors anchors) {
    List<LotRow> waiting =
        view.lots().stream()
            .filter(lot -> lot.verdicts().stream().anyMatch(Pending::undecided))
            .toList();
    return Listed.first(
        waiting,
        lot -> new Waiting(anchors.lot(lot.lot()), Harmless.line(lot.lot()), reasons(lot)),
        "verdicts.csv");
  }

  private static boolean undecided(VerdictRow row) {
    boolean weighty = row.severity().equals("stop") || row.severity().equals("change");
    return weighty && row.verdict().equals("cannot-judge");
  }

  /** Each reason once, with the quantities and groups that it holds up. */
  private static String reasons(LotRow lot) {
    Map<String, Set<String>> held = new LinkedHashMap<>();
    for (VerdictRow row : lot.verdicts()) {
      if (undecided(row)) {
        held.computeIfAbsent(Reasons.of(row), r -> new LinkedHashSet<>())
            .add(Words.of("quantity", row.quantity()) + " for " + Words.of("group", row.group()));
      }
    }
    List<String> sentences = new ArrayList<>();
    held.forEach((reason, what) -> sentences.add(String.join(", ", what) + ": " + reason));
    return String.join(" ", sentences);
  }
}
