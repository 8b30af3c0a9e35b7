package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;
import rickyard.core.forage.AnalyteCode;

/**
 * A maximum tolerable level of the total diet.
 *
 * @param analyte which
 * @param max per kg dry matter in the canonical unit, or per kg body weight a day
 * @param perBodyWeight whether {@code max} is per kg body weight a day in the nutrient's unit
 * @param alarms whether passing it is a reason for a status
 * @param source table row
 * @param others what other sources give for {@code max}
 */
public record Tolerance(
    AnalyteCode analyte,
    double max,
    boolean perBodyWeight,
    boolean alarms,
    Source source,
    List<OtherValue> others) {
  public Tolerance {
    requireNonNull(analyte, "analyte");
    requireNonNull(source, "source");
    others = List.copyOf(others);
    if (!(max > 0 && Double.isFinite(max))) {
      throw new IllegalArgumentException("a tolerance is finite and > 0, was " + max);
    }
  }

  /** The level as an amount per day of a diet, in the nutrient's unit. */
  public double perDay(Nutrient nutrient, double intakeKgDm, double bodyWeightKg) {
    return perDay(max, nutrient, intakeKgDm, bodyWeightKg);
  }

  /** Another source's level as an amount per day of the same diet. */
  double perDay(OtherValue other, Nutrient nutrient, double intakeKgDm, double bodyWeightKg) {
    return perDay(other.value(), nutrient, intakeKgDm, bodyWeightKg);
  }

  private double perDay(double level, Nutrient nutrient, double intakeKgDm, double bodyWeightKg) {
    return perBodyWeight ? level * bodyWeightKg : level * nutrient.perKg() * intakeKgDm;
  }
}
