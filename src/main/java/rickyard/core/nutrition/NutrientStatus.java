package rickyard.core.nutrition;

/** How the supply of a nutrient stands against its requirement and its tolerance. */
public enum NutrientStatus {
  /** The best value falls short. */
  BELOW("below"),
  /** Only the lower bound falls short. */
  NOT_ASSURED("not-assured"),
  MEETS("meets"),
  /** The upper bound passes the maximum tolerable level. */
  ABOVE_CEILING("above-ceiling"),
  /** Something fed has no value, and what is known does not meet the requirement by itself. */
  UNKNOWN("unknown"),
  /** The tables know no requirement for this state of life. */
  NO_REQUIREMENT("no-requirement");

  private final String code;

  NutrientStatus(String code) {
    this.code = code;
  }

  /** The word of the column {@code status} of diets.csv. */
  public String code() {
    return code;
  }
}
