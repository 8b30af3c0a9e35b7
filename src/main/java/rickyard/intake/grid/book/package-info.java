/**
 * Workbooks as cells: each visible sheet a page, numbers as stored, never as a display rounds them.
 *
 * <p>Hidden sheets, rows and columns do not count as printed; what they hold is left out, and the
 * columns beside them keep their places.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.grid.book;
