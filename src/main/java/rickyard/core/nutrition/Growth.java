package rickyard.core.nutrition;

import rickyard.core.quantity.Cites;

/** The growth curve of the requirement tables: weight and daily gain of a young horse by age. */
public final class Growth {
  private Growth() {}

  /**
   * Expected body weight: {@code MW (9.7 + 90.3 (1 - exp(-0.0772 a))) / 100}, constants from the
   * tables.
   *
   * @param matureKg mature weight, kg, above 0
   * @param ageMonths age in months, at least 0
   * @return kg, not rounded
   */
  @Cites(source = "nrc2007-recalled", locator = "growth curve")
  public static double weightKg(double matureKg, double ageMonths, RequirementTables tables) {
    LifeStage stage = anyAge();
    double rate = tables.getParameter("growth_rate_per_month", stage);
    double grown = 1 - StrictMath.exp(-rate * ageMonths);
    double birth = tables.getParameter("growth_birth_pct", stage);
    return matureKg * (birth + tables.getParameter("growth_rest_pct", stage) * grown) / 100;
  }

  /**
   * Average daily gain: {@code MW x 6.97121 exp(-0.0772 a) / (30.4 x 100)}, the derivative of the
   * weight.
   *
   * @param matureKg mature weight, kg, above 0
   * @param ageMonths age in months, at least 0
   * @return kg a day, not rounded
   */
  @Cites(source = "nrc2007-recalled", locator = "growth curve, derivative")
  public static double dailyGainKg(double matureKg, double ageMonths, RequirementTables tables) {
    LifeStage stage = anyAge();
    double rate = tables.getParameter("growth_rate_per_month", stage);
    double monthly =
        tables.getParameter("growth_gain_pct", stage) / 100 * StrictMath.exp(-rate * ageMonths);
    return matureKg * monthly / tables.getParameter("month_days", stage);
  }

  private static LifeStage anyAge() {
    return new LifeStage("growth", "untrained", 12, "");
  }
}
