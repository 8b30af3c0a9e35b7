package rickyard.core.quantity;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;

/**
 * Where a figure stood in a laboratory's document.
 *
 * @param document SHA-256 of the bytes of the file or of the part that holds the figure, lower-case
 *     hex
 * @param page page of a PDF or sheet of a workbook, from 1; 1 for a plain table
 * @param row line of the page or row of the table, from 1, as a person counts them
 * @param column heading of the column where it has one, else its number from 1
 */
public record Place(String document, int page, int row, String column) implements Serializable {

  public Place {
    requireNonNull(document, "document");
    requireNonNull(column, "column");
    if (page < 1 || row < 1) {
      throw new IllegalArgumentException("page and row count from 1, were " + page + ", " + row);
    }
  }

  /** Page, row and column in words, without the document. */
  public String words() {
    return "page " + page + ", row " + row + ", column \"" + column + "\"";
  }
}
