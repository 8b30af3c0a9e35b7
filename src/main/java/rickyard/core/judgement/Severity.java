package rickyard.core.judgement;

/** What going over a limit asks for, the gravest first. */
public enum Severity {
  /** Do not feed; the only one that can make a call now. */
  STOP("stop"),
  /** Change the ration. */
  CHANGE("change"),
  /** Keep an eye on it. */
  WATCH("watch"),
  /** For information. */
  INFO("info");

  private final String code;

  Severity(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
