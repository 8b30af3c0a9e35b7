/** What is to be shown of a morning, as plain rows: the contract between the job and the pages. */
@org.jspecify.annotations.NullMarked
package rickyard.report.view;
