/**
 * Pictures of reports, read by a text recogniser of the machine if one is installed.
 *
 * <p>Nothing that comes from here is ever a value by itself: the grid carries the caution {@code
 * read-by-ocr}, and a person confirms what was read. The recogniser is a program of its own,
 * started without a shell, fed through its standard input, stopped after a time.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.grid.ocr;
