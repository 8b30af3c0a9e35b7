package rickyard.core.nutrition;

import java.util.EnumMap;
import java.util.Map;
import rickyard.core.quantity.Cites;

/**
 * What the coefficients of one horse are multiplied by: parameters are those of the stage whose
 * rows hold, age and month those of {@code months}.
 *
 * <p>Gestation goes by mature weight (also for the dry matter that the tables assume); everything
 * else by body weight now. Nothing is rounded on the way.
 */
final class Drivers {
  private final RequirementTables tables;
  private final LifeStage stage;
  private final int months;
  private final double bodyKg;
  private final double matureKg;
  private final Map<Driver, Double> protein = new EnumMap<>(Driver.class);

  Drivers(Horse horse, LifeStage stage, int months, RequirementTables tables) {
    this.tables = tables;
    this.stage = stage;
    this.months = months;
    this.bodyKg = horse.bodyWeightKg();
    this.matureKg = horse.matureWeightKg().orElse(horse.bodyWeightKg());
  }

  /** Keeps the protein requirement, from which that of lysine follows. */
  void learn(Requirement requirement) {
    if (requirement.nutrient() == Nutrient.CP && requirement.perDay().isPresent()) {
      protein.put(Driver.CP, requirement.perDay().getAsDouble());
      double base =
          requirement.parts().stream()
              .filter(p -> p.driver() == Driver.BW)
              .mapToDouble(Requirement.Part::amount)
              .sum();
      protein.put(Driver.CP_BW, base);
    }
  }

  double value(Driver driver) {
    return switch (driver) {
      case BW, BW_MUSCLE -> bodyKg;
      case MW -> matureKg;
      case BW_WORK_FACTOR -> bodyKg * parameter("work_factor");
      case SWEAT -> bodyKg * parameter("sweat_kg_per_kg");
      case MILK -> bodyKg * parameter("milk_kg_per_kg");
      case DMI -> assumedIntakeKg();
      case CP, CP_BW -> protein(driver);
      case FETAL_GAIN -> fetalGainKg();
      case GAIN -> gainKg();
      case GAIN_AGE -> gainKg() * months;
      case GAIN_AGE_SQUARED -> gainKg() * months * months;
      case GAIN_PER_EFFICIENCY ->
          gainKg() / (parameter("gain_efficiency") * parameter("protein_digestibility"));
      case GROWTH_MAINTENANCE -> growthMaintenance();
    };
  }

  private double parameter(String name) {
    return tables.getParameter(name, stage);
  }

  private double protein(Driver driver) {
    Double found = protein.get(driver);
    if (found == null) {
      throw new IllegalArgumentException("no protein requirement for " + stage.words());
    }
    return found;
  }

  private double assumedIntakeKg() {
    double weight = stage.life().equals("gestation") ? matureKg : bodyKg;
    return weight * parameter("dmi_pct_bw") / 100;
  }

  private double gainKg() {
    return Growth.dailyGainKg(matureKg, months, tables);
  }

  private double growthMaintenance() {
    double aged = StrictMath.pow(months, parameter("maintenance_age_exponent"));
    return aged * bodyKg / 1000 * parameter("work_factor");
  }

  /**
   * Fetal gain: {@code dF/dX} of {@code F = 0.097 MW x 1e-9 X^3.5512}, X in days of gestation.
   *
   * @return kg a day
   */
  @Cites(source = "nrc2007-recalled", locator = "conceptus, fetal growth curve")
  double fetalGainKg() {
    double days = parameter("month_days") * months;
    double exponent = parameter("fetal_exponent");
    double birth = parameter("fetal_share") * matureKg;
    return birth * parameter("fetal_scale") * exponent * StrictMath.pow(days, exponent - 1);
  }
}
