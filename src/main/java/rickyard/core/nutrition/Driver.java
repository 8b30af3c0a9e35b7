package rickyard.core.nutrition;

import java.util.Optional;

/** What a coefficient of a requirement table is multiplied by. */
public enum Driver {
  BW("bw", "kg body weight"),
  MW("mw", "kg mature weight"),
  /** Body weight again, where the table keeps muscle gain apart from the base. */
  BW_MUSCLE("bw_muscle", "kg body weight"),
  BW_WORK_FACTOR("bw_work_factor", "kg body weight x work factor"),
  SWEAT("sweat", "kg sweat"),
  MILK("milk", "kg milk"),
  DMI("dmi", "kg dry matter that the tables assume"),
  CP("cp", "g crude protein required"),
  CP_BW("cp_bw", "g crude protein required for body weight alone"),
  FETAL_GAIN("fetal_gain", "kg fetal gain a day"),
  GAIN("gain", "kg gain a day"),
  GAIN_AGE("gain_age", "kg gain a day x age in months"),
  GAIN_AGE_SQUARED("gain_age_squared", "kg gain a day x age in months squared"),
  GAIN_PER_EFFICIENCY("gain_per_efficiency", "kg gain a day / (efficiency x digestibility)"),
  GROWTH_MAINTENANCE(
      "growth_maintenance", "age in months ^ exponent x kg body weight / 1000 x work factor");

  private final String code;
  private final String words;

  Driver(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** The word of the column {@code driver}. */
  public String code() {
    return code;
  }

  /** What it is, with its unit. */
  public String words() {
    return words;
  }

  public static Optional<Driver> findByCode(String code) {
    for (Driver driver : values()) {
      if (driver.code.equals(code)) {
        return Optional.of(driver);
      }
    }
    return Optional.empty();
  }
}
