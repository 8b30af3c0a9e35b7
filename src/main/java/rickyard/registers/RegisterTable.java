package rickyard.registers;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * One register's header and rows, split into cells but not yet understood.
 *
 * @param file file name
 * @param header column names, lower case, stripped
 * @param rows rows that are not wholly blank
 * @param mark how its numbers are written
 */
record RegisterTable(
    String file, List<String> header, List<Line> rows, DecimalMark mark, Map<String, Integer> at) {

  RegisterTable(String file, List<String> header, List<Line> rows, DecimalMark mark) {
    this(file, List.copyOf(header), List.copyOf(rows), mark, positions(header));
  }

  private static Map<String, Integer> positions(List<String> header) {
    Map<String, Integer> at = new TreeMap<>();
    for (int i = 0; i < header.size(); i++) {
      at.putIfAbsent(header.get(i), i);
    }
    return at;
  }

  boolean has(String column) {
    return at.containsKey(column);
  }

  OptionalInt position(String column) {
    Integer found = at.get(column);
    return found == null ? OptionalInt.empty() : OptionalInt.of(found);
  }

  /** The rows, each ready to give typed cells. */
  List<RegisterRow> read() {
    return rows.stream().map(line -> new RegisterRow(this, line)).toList();
  }

  /**
   * One row's cells.
   *
   * @param number row of the file from 1, header and blank rows counted, as a spreadsheet shows it
   * @param cells stripped, without the guard against formulas
   */
  record Line(int number, List<String> cells) {
    Line {
      cells = List.copyOf(cells);
    }

    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }
}
