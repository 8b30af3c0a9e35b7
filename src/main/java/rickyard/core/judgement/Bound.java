package rickyard.core.judgement;

/** Which side of a limit is the wrong one. */
public enum Bound {
  /** The value must not be over the limit. */
  MAX("max"),
  /** The value must not be under the limit. */
  MIN("min");

  private final String code;

  Bound(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
