/**
 * The tables of a morning for spreadsheet people. Way in: {@link rickyard.report.book.SummaryBook}.
 * The same rows stand in the CSV files; nothing is decided here.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.book;
