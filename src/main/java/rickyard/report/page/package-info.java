/**
 * The summary page: what it shows section by section, its pictures, and the templates that set it.
 *
 * <p>The way in is {@link rickyard.report.page.SummaryPage}. The section records hold finished
 * words; templates only repeat and escape them.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.page;
