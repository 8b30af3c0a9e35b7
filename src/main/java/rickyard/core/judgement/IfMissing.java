package rickyard.core.judgement;

/** What a value that nobody measured leads to. */
public enum IfMissing {
  /** A verdict 'cannot-judge' that says what is missing. */
  ASK("ask"),
  /** Nothing: most reports do not hold it. */
  SILENT("silent");

  private final String code;

  IfMissing(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
