/**
 * Half a screen about a horse, a client or a lot, for the person with the telephone in hand. Way
 * in: {@link rickyard.report.about.AboutCards}. It words what other rooms decided.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.about;
