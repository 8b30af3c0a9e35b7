package rickyard.core.forage;

/** What a report says of its own standing. */
public enum ReportStatus {
  FINAL("final"),
  PRELIMINARY("preliminary"),
  AMENDED("amended"),
  WITHDRAWN("withdrawn");

  private final String code;

  ReportStatus(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
