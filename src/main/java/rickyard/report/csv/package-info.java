/**
 * CSV files as the outputs promise them; the way in is {@link rickyard.report.csv.CsvOut}.
 *
 * <p>It knows cells and bytes, not what stands in them, and writes no file.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.csv;
