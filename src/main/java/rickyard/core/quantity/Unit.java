package rickyard.core.quantity;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * The units in which laboratories print contents, with factors to a common unit of each dimension.
 *
 * <p>Exact by definition: 1 lb = 0.45359237 kg, 1 cal = 4.184 J (thermochemical). A factor is kept
 * as the quotient of two exactly written numbers, so that 1 % is exactly 10 g/kg.
 */
public enum Unit {
  PERCENT("%", Dimension.MASS_SHARE, 10_000, 1),
  G_PER_KG("g/kg", Dimension.MASS_SHARE, 1_000, 1),
  MG_PER_KG("mg/kg", Dimension.MASS_SHARE, 1, 1),
  UG_PER_KG("ug/kg", Dimension.MASS_SHARE, 1, 1_000),
  G_PER_LB("g/lb", Dimension.MASS_SHARE, 1_000, Pound.KG),
  MG_PER_LB("mg/lb", Dimension.MASS_SHARE, 1, Pound.KG),
  MCAL_PER_KG("Mcal/kg", Dimension.ENERGY_DENSITY, 1, 1),
  MCAL_PER_LB("Mcal/lb", Dimension.ENERGY_DENSITY, 1, Pound.KG),
  KCAL_PER_KG("kcal/kg", Dimension.ENERGY_DENSITY, 1, 1_000),
  KCAL_PER_LB("kcal/lb", Dimension.ENERGY_DENSITY, 1, 1_000 * Pound.KG),
  MJ_PER_KG("MJ/kg", Dimension.ENERGY_DENSITY, 1, Unit.MJ_PER_MCAL),
  MJ_PER_LB("MJ/lb", Dimension.ENERGY_DENSITY, 1, Unit.MJ_PER_MCAL * Pound.KG),
  IU_PER_KG("IU/kg", Dimension.ACTIVITY, 1, 1),
  IU_PER_LB("IU/lb", Dimension.ACTIVITY, 1, Pound.KG),
  IU_PER_G("IU/g", Dimension.ACTIVITY, 1_000, 1),
  CFU_PER_G("CFU/g", Dimension.COUNT, 1, 1),
  ONE("1", Dimension.NUMBER, 1, 1);

  private static final double MJ_PER_MCAL = 4.184;

  private final String code;
  private final Dimension dimension;
  private final double numerator;
  private final double denominator;

  Unit(String code, Dimension dimension, double numerator, double denominator) {
    this.code = code;
    this.dimension = dimension;
    this.numerator = numerator;
    this.denominator = denominator;
  }

  /** The unit as tables and outputs write it, for example {@code mg/kg}. */
  public String code() {
    return code;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The unit with exactly this code, if there is one. */
  public static Optional<Unit> findByCode(String code) {
    for (Unit unit : values()) {
      if (unit.code.equals(code)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /**
   * Re-expresses a number of this unit in another unit of the same dimension.
   *
   * @param amount the number in this unit; may be infinite (an open bound)
   * @param target the unit wanted
   * @return the number in {@code target}, not rounded
   * @throws UnlikeQuantitiesException if the dimensions differ
   */
  @Cites(
      source = "definition",
      locator = "international pound 0.45359237 kg; thermochemical calorie 4.184 J")
  public double convert(double amount, Unit target) {
    requireNonNull(target, "target");
    if (dimension != target.dimension) {
      throw new UnlikeQuantitiesException(code + " does not convert to " + target.code);
    }
    if (this == target) {
      return amount;
    }
    return amount * (numerator * target.denominator) / (denominator * target.numerator);
  }
}
