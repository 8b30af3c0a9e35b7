package rickyard.report.view;

/** A row of outcomes.csv: one file, or one part of a container ({@code part} not empty). */
public record OutcomeRow(
    String file,
    String part,
    String sha256,
    long bytes,
    String kind,
    String outcome,
    String reasonCode,
    String reason,
    String lab,
    String reportNo,
    int revision,
    int samples) {}
