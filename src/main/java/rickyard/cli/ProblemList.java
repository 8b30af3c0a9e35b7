package rickyard.cli;

import java.util.ArrayList;
import java.util.List;
import rickyard.morning.OfficeCheck;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import rickyard.tables.TableProblem;

/** What is wrong with registers and config, in 80 columns and as a table. */
final class ProblemList {
  private static final List<String> COLUMNS =
      List.of("kind", "file", "row", "column", "code", "expected", "found");

  private ProblemList() {}

  static List<String> of(OfficeCheck.Result result) {
    List<String> lines = new ArrayList<>();
    result.errors().forEach(e -> lines.addAll(Wrapped.lines(e.message())));
    result.notes().forEach(n -> lines.addAll(Wrapped.lines("note: " + n.message())));
    lines.addAll(
        Wrapped.lines(
            result.isClean()
                ? "Registers and config can be used: " + result.counts() + "."
                : "Mend these rows; a morning still runs where only single rows are bad."));
    return lines;
  }

  static Table table(OfficeCheck.Result result) {
    List<List<Field>> rows = new ArrayList<>();
    result.errors().forEach(e -> rows.add(row("error", e)));
    result.notes().forEach(n -> rows.add(row("note", n)));
    return new Table("check.csv", COLUMNS, rows);
  }

  private static List<Field> row(String kind, TableProblem problem) {
    return List.of(
        Field.text(kind),
        Field.text(problem.file()),
        Field.place(problem.row()),
        Field.text(problem.column()),
        Field.text(problem.code()),
        Field.text(problem.expected()),
        Field.text(problem.found()));
  }
}
