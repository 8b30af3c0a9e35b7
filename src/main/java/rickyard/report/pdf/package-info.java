/**
 * Pages to PDF, with embedded fonts and the same bytes each time. The only room besides intake that
 * knows a PDF library.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.pdf;
