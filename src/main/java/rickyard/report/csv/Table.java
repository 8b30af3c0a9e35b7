package rickyard.report.csv;

import static java.util.Objects.requireNonNull;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

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
    if (!(rows instanceof Made)) {
      rows = rows.stream().map(List::copyOf).toList();
      for (List<Field> row : rows) {
        check(file, columns, row);
      }
    }
  }

  private static void check(String file, List<String> columns, List<Field> row) {
    if (row.size() != columns.size()) {
      throw new IllegalArgumentException(
          file + ": " + row.size() + " fields for " + columns.size() + " columns");
    }
  }

  /** Rows that are made when they are read, and not kept: a season has some hundred thousand. */
  private static final class Made<T> extends AbstractList<List<Field>> {
    private final String file;
    private final List<String> columns;
    private final List<T> all;
    private final Function<T, List<Field>> make;

    private Made(String file, List<String> columns, List<T> all, Function<T, List<Field>> make) {
      this.file = file;
      this.columns = columns;
      this.all = all;
      this.make = make;
    }

    @Override
    public List<Field> get(int index) {
      List<Field> row = make.apply(all.get(index));
      check(file, columns, row);
      return row;
    }

    @Override
    public int size() {
      return all.size();
    }
  }

  /** A table with a row for each of these, made when it is read. */
  static <T> Table of(String file, String columns, List<T> all, Function<T, List<Field>> make) {
    List<String> names = names(columns);
    return new Table(file, names, new Made<>(file, names, List.copyOf(all), make));
  }

  private static List<String> names(String columns) {
    return Arrays.stream(columns.split(",", -1)).map(String::strip).toList();
  }

  /** A table of these comma-separated column names. */
  static Table of(String file, String columns, List<List<Field>> rows) {
    return new Table(file, names(columns), rows);
  }
}
