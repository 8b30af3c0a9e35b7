package rickyard.report.view;

/** A row of follow-ups.csv; {@code due} an ISO date. */
public record FollowUpRow(String due, String kind, String about, String what, String why) {}
