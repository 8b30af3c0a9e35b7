package rickyard.report.csv;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.List;

/**
 * An output table.
 *
 * @param file its path below the output folder
 * @param columns their names, in the order that others script against
 * @param rows as many fields as columns
 */
public record Table(String file, List<String> columns, List<List<Field>> rows) {

  public Table {
    requireNonNull(file, "file");
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Field> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            file + ": " + row.size() + " fields for " + columns.size() + " columns");
      }
    }
  }

  /** A table of these comma-separated column names. */
  static Table of(String file, String columns, List<List<Field>> rows) {
    return new Table(file, Arrays.stream(columns.split(",", -1)).map(String::strip).toList(), rows);
  }
}
