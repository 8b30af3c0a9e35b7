package rickyard.core.nutrition;

/** How a body weight was obtained; decides how far it may be off. */
public enum WeightBy {
  SCALE("scale"),
  TAPE("tape"),
  GUESS("guess");

  private final String code;

  WeightBy(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
