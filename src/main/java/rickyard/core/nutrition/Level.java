package rickyard.core.nutrition;

/** Degree within a status; which ones are legal depends on the status. */
public enum Level {
  LOW("low"),
  AVERAGE("average"),
  ELEVATED("elevated"),
  LIGHT("light"),
  MODERATE("moderate"),
  HEAVY("heavy"),
  VERY_HEAVY("very-heavy"),
  BREEDING("breeding"),
  NON_BREEDING("non-breeding"),
  NONE("");

  private final String code;

  Level(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
