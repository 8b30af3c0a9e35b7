package rickyard.core.forage;

/** How a figure was obtained, as far as the report says. */
public enum Method {
  NIR("nir"),
  WET("wet"),
  CALCULATED("calc"),
  UNKNOWN("unknown");

  private final String code;

  Method(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
