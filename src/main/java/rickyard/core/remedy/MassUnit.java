package rickyard.core.remedy;

import rickyard.core.quantity.Pound;

/** The unit of the scale that amounts are weighed on. */
public enum MassUnit {
  KG("kg", 1),
  LB("lb", Pound.KG);

  private final String code;
  private final double kg;

  MassUnit(String code, double kg) {
    this.code = code;
    this.kg = kg;
  }

  /**
   * The unit of a word.
   *
   * @param code kg or lb
   */
  public static MassUnit named(String code) {
    for (MassUnit unit : values()) {
      if (unit.code.equals(code)) {
        return unit;
      }
    }
    throw new IllegalArgumentException("a scale weighs in kg or lb, not in " + code);
  }

  public String code() {
    return code;
  }

  /** Kilograms of one unit, exact. */
  public double kg() {
    return kg;
  }
}
