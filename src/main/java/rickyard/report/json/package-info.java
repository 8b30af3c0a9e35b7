/** The summary as JSON, for other programs: the same rows and words as the page. */
@org.jspecify.annotations.NullMarked
package rickyard.report.json;
