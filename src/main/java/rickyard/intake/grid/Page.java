package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/**
 * A page of a PDF, a sheet of a workbook, or a whole text table.
 *
 * @param number from 1
 * @param name name of a sheet; empty otherwise
 * @param rows from top to bottom, rows without cells left out
 */
public record Page(int number, String name, List<Row> rows) implements Serializable {

  public Page {
    requireNonNull(name, "name");
    rows = List.copyOf(rows);
  }
}
