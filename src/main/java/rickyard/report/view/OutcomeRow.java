package rickyard.report.view;

/**
 * A row of outcomes.csv: one file, or one part of a container ({@code part} not empty).
 *
 * @param layout id of the page's layout; empty where there is none
 * @param layoutNote new, known or changed, then what is to be said of it, semicolons between
 */
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
    int samples,
    String layout,
    String layoutNote) {

  /** A row of something without a layout. */
  public OutcomeRow(
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
      int samples) {
    this(
        file,
        part,
        sha256,
        bytes,
        kind,
        outcome,
        reasonCode,
        reason,
        lab,
        reportNo,
        revision,
        samples,
        "",
        "");
  }

  /** The same row with its layout. */
  public OutcomeRow withLayout(String id, String note) {
    return new OutcomeRow(
        file,
        part,
        sha256,
        bytes,
        kind,
        outcome,
        reasonCode,
        reason,
        lab,
        reportNo,
        revision,
        samples,
        id,
        note);
  }
}
