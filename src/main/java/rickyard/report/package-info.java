/**
 * Everything a person or another program sees: pages, tables, JSON. It rounds and words; it decides
 * nothing.
 *
 * <p>The way in is {@link rickyard.report.view.MorningView}, what is to be shown.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report;
