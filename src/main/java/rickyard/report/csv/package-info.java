/**
 * The CSV outputs: one table a file, columns in the order that others script against.
 *
 * <p>The way in is {@link rickyard.report.csv.MorningTables}; {@link rickyard.report.csv.CsvOut}
 * writes and undoes the guard of formula-like text.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.csv;
