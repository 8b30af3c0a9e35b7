package rickyard.core.advice;

/** How soon a person must hear of a horse; the order of declaration is the order of urgency. */
public enum Priority {
  CALL_NOW("call-now"),
  CALL_TODAY("call-today"),
  ASK("ask"),
  NOTE("note"),
  STANDING("standing"),
  NONE("none");

  private final String code;

  Priority(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
