package rickyard.core.season;

/** What a series of values over time shows. */
public enum Course {
  /** No difference that the errors of the values would not explain. */
  STEADY("steady"),
  /** Two values that differ by more than twice their joint uncertainty. */
  CHANGED("changed"),
  RISING("rising"),
  FALLING("falling"),
  /** Some values differ by more than their errors explain, without a direction. */
  SCATTERED("scattered");

  private final String code;

  Course(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }

  static Course of(double slope) {
    return slope > 0 ? RISING : FALLING;
  }
}
