package rickyard.report.view;

/** A row of follow-ups.csv; {@code due} an ISO date, {@code id} the same every morning. */
public record FollowUpRow(
    String due, String kind, String about, String what, String why, String id) {}
