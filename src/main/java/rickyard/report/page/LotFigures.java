package rickyard.report.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.AnalysisRow;

/** The figures of a lot, and of several in force for one quantity the one that is used. */
public final class LotFigures {
  private static final String IN_FORCE = "in-force";

  /** One figure with the place that it was read from, or the cells that it is derived from. */
  public record Figure(
      String analyte, String value, String printed, String place, String origin, String state) {}

  private LotFigures() {}

  static List<Figure> of(List<AnalysisRow> rows) {
    Map<String, Integer> used = new HashMap<>();
    Map<String, Integer> standing = new HashMap<>();
    for (AnalysisRow row : rows) {
      if (row.state().equals(IN_FORCE)) {
        standing.merge(key(row), 1, Integer::sum);
        used.merge(key(row), row.used() ? 1 : 0, Integer::sum);
      }
    }
    return rows.stream()
        .map(
            row -> {
              boolean several = standing.getOrDefault(key(row), 0) > 1;
              boolean known = used.getOrDefault(key(row), 0) == 1;
              return figure(row, several && known);
            })
        .toList();
  }

  private static String key(AnalysisRow row) {
    return row.analyte() + "\n" + row.batch();
  }

  private static Figure figure(AnalysisRow row, boolean isChoice) {
    String unit = (row.unit().equals("1") ? "" : row.unit()) + " " + Words.of("basis", row.basis());
    return new Figure(
        Words.of("nutrient", row.analyte()),
        value(row, isChoice) + " " + Harmless.line(unit),
        Harmless.line(row.raw() + " " + printed(row.rawUnit()) + " " + basis(row.rawBasis())),
        row.from().isBlank() ? place(row) : Harmless.line(row.from()),
        Words.of("origin", row.origin()),
        Plain.line(row.state()) + choice(row, isChoice));
  }

  /** A figure that nothing is judged by has no uncertainty but that of its last digit. */
  private static String value(AnalysisRow row, boolean isChoice) {
    boolean judges = row.state().equals(IN_FORCE) && (!isChoice || row.used());
    return Shown.bounded(
        row.value(),
        row.low(),
        row.high() == null ? row.value() : row.high(),
        judges ? row.u() : null);
  }

  private static String printed(String unit) {
    return unit.equals("none") ? "" : unit;
  }

  private static String basis(String basis) {
    return basis.isBlank() ? "" : Words.of("basis", basis);
  }

  private static String choice(AnalysisRow row, boolean isChoice) {
    if (!isChoice || !row.state().equals(IN_FORCE)) {
      return "";
    }
    return row.used() ? "; the lot is judged by this one" : "; beside it, not judged by this one";
  }

  private static String place(AnalysisRow row) {
    if (row.file().isBlank()) {
      return "";
    }
    StringBuilder place = new StringBuilder(Harmless.line(row.file()));
    if (!row.part().isBlank()) {
      place.append(", ").append(Harmless.line(row.part()));
    }
    if (row.page() > 0) {
      place.append(", page ").append(row.page());
    }
    if (row.row() > 0) {
      place.append(", row ").append(row.row());
    }
    if (!row.column().isBlank()) {
      place.append(", column ").append(Harmless.line(row.column()));
    }
    return place.toString();
  }
}
