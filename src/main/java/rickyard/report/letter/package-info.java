/**
 * Drafts of letters to clients and of alerts to advisers. Nothing is sent from here; besides
 * rickyard.post it is the only room that knows a mail library.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.letter;
