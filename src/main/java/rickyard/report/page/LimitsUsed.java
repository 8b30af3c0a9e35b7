package rickyard.report.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rickyard.core.advice.LimitLine;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.MorningView;
import rickyard.report.view.VerdictRow;

/** The limits that lots and diets of this morning were held against, each once. */
public final class LimitsUsed {
  /** One of them; {@code risk} the accepted chance of being wrong where the page knows it. */
  public record Line(
      String group, String what, String limit, String risk, String weight, String id) {}

  private LimitsUsed() {}

  static List<Line> of(MorningView view) {
    Map<String, Line> lines = new LinkedHashMap<>();
    view.lots().stream()
        .flatMap(lot -> lot.verdicts().stream())
        .filter(row -> !row.limitId().isBlank())
        .forEach(row -> lines.putIfAbsent(row.limitId(), line(row)));
    view.horses().stream()
        .map(horse -> horse.after())
        .flatMap(Stream::ofNullable)
        .flatMap(diet -> diet.limits().stream())
        .filter(row -> !row.limitId().isBlank())
        .forEach(row -> lines.putIfAbsent(row.limitId(), line(row)));
    return lines.values().stream()
        .sorted(Comparator.comparing(Line::group).thenComparing(Line::id))
        .toList();
  }

  private static Line line(VerdictRow row) {
    return line(
        row.limitId(),
        row.group(),
        "lot",
        row.quantity(),
        row.limit(),
        row.unit(),
        row.risk() == null ? "none: no guard band" : Shown.chance(row.risk()),
        row.severity());
  }

  private static Line line(LimitLine row) {
    return line(
        row.limitId(),
        row.group(),
        row.subject(),
        row.quantity(),
        row.limit(),
        row.unit(),
        "stands in its reasons",
        row.severity());
  }

  private static Line line(
      String id,
      String group,
      String subject,
      String quantity,
      double limit,
      String unit,
      String risk,
      String severity) {
    return new Line(
        Words.of("group", group),
        Words.of("quantity", quantity) + ", " + Words.of("subject", subject),
        Shown.number(Double.valueOf(limit)) + " " + Words.of("unit", unit),
        risk,
        Words.of("severity", severity),
        Harmless.line(id));
  }
}
