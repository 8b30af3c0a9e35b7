package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;

/**
 * A piece of text with its place on the page.
 *
 * @param text trimmed text, never empty: a blank cell is simply not there
 * @param left left edge. PDF: points from the left of the page. Tables: 100 × column number from 0
 * @param right right edge, above {@code left}. Tables: left + 99
 * @param column number of the cell in its row from 1; in a table the column's number, blanks
 *     counted
 * @param nature how the text came to stand there
 */
public record Cell(String text, double left, double right, int column, Nature nature)
    implements Serializable {

  /** How a text came to stand in its cell; only a workbook knows another one than printed. */
  public enum Nature {
    /** Written as it stands. */
    PRINTED,
    /** A number stored as a number: its point is the decimal mark for certain. */
    STORED,
    /** The stored result of a formula: nobody knows whether it was computed again in time. */
    COMPUTED,
    /** A number whose cell shows another one, or no single one. */
    RESHAPED,
    /** A day stored as a day; a spreadsheet makes days out of figures like 7.4 by itself. */
    DATED,
    /** An error, or a formula without a result. */
    FAILED;

    /** What the cell is if a formula made it. */
    public Nature computed() {
      return this == PRINTED || this == STORED ? COMPUTED : this;
    }
  }

  public Cell {
    requireNonNull(text, "text");
    requireNonNull(nature, "nature");
    if (text.isBlank() || !text.equals(text.strip())) {
      throw new IllegalArgumentException("a cell holds stripped, non-blank text: '" + text + "'");
    }
    if (!(right > left)) {
      throw new IllegalArgumentException("cell of no width: " + left + " to " + right);
    }
    if (column < 1) {
      throw new IllegalArgumentException("columns count from 1, was " + column);
    }
  }

  /** A printed cell. */
  public Cell(String text, double left, double right, int column) {
    this(text, left, right, column, Nature.PRINTED);
  }

  /** How much of the narrower of two spans lies in both: 0 (apart) to 1 (one inside the other). */
  public double overlap(Cell other) {
    double common = Math.min(right, other.right) - Math.max(left, other.left);
    return Math.max(0, common) / Math.min(right - left, other.right - other.left);
  }
}
