/**
 * What is due, as a calendar file. Way in: {@link rickyard.report.calendar.FollowUpCalendar}. The
 * same rows stand in follow-ups.csv; nothing is decided here.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.calendar;
