/**
 * PDF pages as cells by position. The way in is {@link rickyard.intake.grid.pdf.PdfPages}. Order of
 * drawing plays no part; text that nobody can see is left out with a caution.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.grid.pdf;
