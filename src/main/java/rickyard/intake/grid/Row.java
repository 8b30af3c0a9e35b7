package rickyard.intake.grid;

import java.io.Serializable;
import java.util.List;

/**
 * One line of a page or one record of a table.
 *
 * @param number as a person counts it, from 1: the record of a table (blank lines counted), the
 *     text line of a page from the top
 * @param top distance from the top of the page in points; the row number for tables
 * @param cells from left to right, non-blank only
 */
public record Row(int number, double top, List<Cell> cells) implements Serializable {

  public Row {
    if (number < 1) {
      throw new IllegalArgumentException("rows count from 1, was " + number);
    }
    cells = List.copyOf(cells);
  }
}
