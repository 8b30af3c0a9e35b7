/**
 * Text tables and text listings as cells. The way in is {@link
 * rickyard.intake.grid.csv.TextTables}; encoding and delimiter are found from the whole text, never
 * from a name.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.grid.csv;
