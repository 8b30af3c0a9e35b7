package rickyard.tables;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** One row of a table; problems found while taking its cells are collected, not thrown. */
public final class TableRow {
  private static final Pattern DECIMAL = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]+)?");

  private final String file;
  private final int number;
  private final Map<String, String> cells;
  private final boolean office;
  private final List<TableProblem> problems;

  TableRow(
      String file,
      int number,
      Map<String, String> cells,
      boolean office,
      List<TableProblem> problems) {
    this.file = file;
    this.number = number;
    this.cells = Map.copyOf(cells);
    this.office = office;
    this.problems = problems;
  }

  public String file() {
    return file;
  }

  /** Row of the file from 1, comments and header counted. */
  public int number() {
    return number;
  }

  /** Whether the office's own config gave this row. */
  public boolean isOffice() {
    return office;
  }

  /** The cell's text, stripped; empty where the cell is blank. */
  public String text(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw new IllegalArgumentException(file + " has no column " + column);
    }
    return cell;
  }

  /** The cell's text; a blank one is a problem. */
  public String required(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      problem(column, "blank", "a value");
    }
    return cell;
  }

  /** A decimal number with a point; empty where blank; anything else is a problem. */
  public OptionalDouble number(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (!DECIMAL.matcher(cell).matches()) {
      problem(column, "not-a-number", "a decimal number with a point");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Double.parseDouble(cell));
  }

  /** A decimal number that must be there; NaN after a problem. */
  public double requiredNumber(String column) {
    OptionalDouble value = number(column);
    if (value.isEmpty() && text(column).isEmpty()) {
      problem(column, "blank", "a decimal number with a point");
    }
    return value.orElse(Double.NaN);
  }

  /** Notes a problem with a cell of this row. */
  public void problem(String column, String code, String expected) {
    String found = column.isEmpty() ? "" : cells.getOrDefault(column, "");
    problems.add(new TableProblem(file, number, column, code, expected, found));
  }
}
