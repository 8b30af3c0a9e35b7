package rickyard.core.quantity;

/** The matter that a content refers to. */
public enum Basis {
  /** The feed as it is weighed, water included. */
  AS_FED("af"),
  /** The feed without its water. */
  DRY_MATTER("dm"),
  /** A figure that refers to neither: an index, a ratio of two contents, a pH. */
  NONE("none");

  private final String code;

  Basis(String code) {
    this.code = code;
  }

  /** The code used in tables and outputs. */
  public String code() {
    return code;
  }
}
