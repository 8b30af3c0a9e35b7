/** How a number came about, as lines of text: from the formula down to the cell or table row. */
@org.jspecify.annotations.NullMarked
package rickyard.report.trace;
