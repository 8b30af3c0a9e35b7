package rickyard.core.nutrition;

/** What a horse eats that nobody weighs, as the register says; blank is unknown. */
public enum Extras {
  NONE("none"),
  TREATS("treats"),
  SHARED("shared"),
  UNKNOWN("unknown");

  private final String code;

  Extras(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
