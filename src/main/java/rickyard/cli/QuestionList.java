package rickyard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rickyard.morning.OpenQuestion;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;

/** The open questions as a table for eyes, as CSV and as JSON. */
final class QuestionList {
  private static final int PROPOSED = Wrapped.WIDTH - 14 - 22 - 12 - 6;
  private static final List<String> COLUMNS =
      List.of(
          "question_id", "kind", "file", "part", "about", "question", "choices", "proposed", "why");

  private QuestionList() {}

  /** At most 80 columns where ids are short: one line each, and the question under it. */
  static String of(List<OpenQuestion> questions) {
    List<String> lines = new ArrayList<>();
    if (questions.isEmpty()) {
      lines.add("No question is open.");
    } else {
      lines.add(row("question_id", "kind", "about", "proposed"));
    }
    for (OpenQuestion q : questions) {
      lines.add(row(q.id(), q.kind(), q.about(), q.proposed()));
      lines.addAll(Wrapped.lines("  " + q.question()));
    }
    return String.join(System.lineSeparator(), lines) + System.lineSeparator();
  }

  private static String row(String id, String kind, String about, String proposed) {
    return String.format(
            Locale.ROOT,
            "%-14s  %-22s  %-12s  %s",
            id,
            Wrapped.cut(kind, 22),
            Wrapped.cut(about, 12),
            Wrapped.cut(proposed, PROPOSED))
        .stripTrailing();
  }

  static String csv(List<OpenQuestion> questions) {
    List<List<Field>> rows = new ArrayList<>();
    for (OpenQuestion q : questions) {
      rows.add(
          List.of(
              Field.text(q.id()),
              Field.text(q.kind()),
              Field.text(q.file()),
              Field.text(q.part()),
              Field.text(q.about()),
              Field.text(q.question()),
              Field.text(String.join("|", q.choices())),
              Field.text(q.proposed()),
              Field.text(q.why())));
    }
    Table table = new Table("questions.csv", COLUMNS, rows);
    return Shape.csv(table);
  }

  static String json(List<OpenQuestion> questions) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (OpenQuestion q : questions) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("question_id", q.id());
      one.put("kind", q.kind());
      one.put("file", q.file());
      one.put("part", q.part());
      one.put("about", q.about());
      one.put("question", q.question());
      one.put("choices", q.choices());
      one.put("proposed", q.proposed());
      one.put("why", q.why());
      one.put("seen", q.seen());
      all.add(one);
    }
    return Shape.json(all);
  }
}
