/**
 * Templates of sheets, letters and alerts: built in, and the office's own in their place. The way
 * in is {@link rickyard.report.template.Templates}.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.template;
