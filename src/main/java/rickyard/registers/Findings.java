package rickyard.registers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import rickyard.tables.TableProblem;

/** Everything found wrong so far; one of these per load. */
final class Findings {
  private static final Comparator<TableProblem> ORDER =
      Comparator.comparing(TableProblem::file)
          .thenComparing(TableProblem::row)
          .thenComparing(TableProblem::column)
          .thenComparing(TableProblem::code)
          .thenComparing(TableProblem::expected)
          .thenComparing(TableProblem::found);

  private final TreeSet<TableProblem> fatal = new TreeSet<>(ORDER);
  private final TreeSet<TableProblem> warnings = new TreeSet<>(ORDER);
  private final TreeSet<BadRow> badRows = new TreeSet<>(BadRow.ORDER);

  void fatal(TableProblem problem) {
    fatal.add(problem);
  }

  void warn(TableProblem problem) {
    warnings.add(problem);
  }

  void bad(Concern concern, String id, String clientId, TableProblem problem) {
    badRows.add(new BadRow(concern, id, clientId, problem));
  }

  List<TableProblem> fatal() {
    return new ArrayList<>(fatal);
  }

  List<TableProblem> warnings() {
    return new ArrayList<>(warnings);
  }

  List<BadRow> badRows() {
    return new ArrayList<>(badRows);
  }
}
