package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * One nutrient of a diet: what is supplied against what is needed and what is tolerated.
 *
 * @param nutrient which
 * @param supply amount per day, or the ratio
 * @param requirement per day; empty if the tables know none
 * @param maxTolerable per day at the diet's intake; empty if the tables know none
 * @param status how they stand
 */
public record NutrientLine(
    Nutrient nutrient,
    Amount supply,
    OptionalDouble requirement,
    OptionalDouble maxTolerable,
    NutrientStatus status) {

  /** Two amounts closer than this share of the larger one are equal: it absorbs binary rounding. */
  private static final double TIE = 1e-9;

  public NutrientLine {
    requireNonNull(nutrient, "nutrient");
    requireNonNull(supply, "supply");
    requireNonNull(requirement, "requirement");
    requireNonNull(maxTolerable, "maxTolerable");
    requireNonNull(status, "status");
  }

  /**
   * Judges a supply.
   *
   * @param alarms whether passing {@code maxTolerable} is a reason for a status
   */
  static NutrientLine of(
      Nutrient nutrient,
      Amount supply,
      OptionalDouble requirement,
      OptionalDouble maxTolerable,
      boolean alarms) {
    NutrientStatus status;
    if (alarms
        && maxTolerable.isPresent()
        && exceeds(supply.ceiling(), maxTolerable.getAsDouble())) {
      status = NutrientStatus.ABOVE_CEILING;
    } else if (requirement.isEmpty()) {
      status = NutrientStatus.NO_REQUIREMENT;
    } else {
      status = againstNeed(nutrient, supply, requirement.getAsDouble());
    }
    return new NutrientLine(nutrient, supply, requirement, maxTolerable, status);
  }

  /** Energy is held against its best value only; everything else against its lower bound too. */
  private static NutrientStatus againstNeed(Nutrient nutrient, Amount supply, double need) {
    double bound = nutrient == Nutrient.DE ? supply.best() : supply.low();
    boolean isAssured = !exceeds(need, bound);
    if (!supply.isComplete()) {
      boolean settles = isAssured && nutrient != Nutrient.CA_P;
      return settles ? NutrientStatus.MEETS : NutrientStatus.UNKNOWN;
    }
    if (exceeds(need, supply.best())) {
      return NutrientStatus.BELOW;
    }
    return isAssured ? NutrientStatus.MEETS : NutrientStatus.NOT_ASSURED;
  }

  private static boolean exceeds(double a, double b) {
    return a - b > TIE * Math.max(Math.abs(a), Math.abs(b));
  }

  /** Supply in % of the requirement, from the best value. */
  public OptionalDouble percentOfRequirement() {
    return requirement.isPresent() && requirement.getAsDouble() > 0
        ? OptionalDouble.of(100 * supply.best() / requirement.getAsDouble())
        : OptionalDouble.empty();
  }
}
