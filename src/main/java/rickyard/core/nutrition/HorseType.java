package rickyard.core.nutrition;

/** Kinds of equids that differ in floors, straw caps and energy. */
public enum HorseType {
  HORSE("horse"),
  PONY("pony"),
  MINIATURE("miniature"),
  DONKEY("donkey");

  private final String code;

  HorseType(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
