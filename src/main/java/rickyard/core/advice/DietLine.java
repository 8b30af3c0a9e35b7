package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One nutrient of a diet, as a row of diets.csv; a null number is one that nobody knows or sets.
 *
 * @param nutrient code
 * @param unit per day: kg, Mcal, g, mg, IU; 1 for a ratio
 * @param supply best value per day
 * @param low supply - 2u
 * @param high supply + 2u
 * @param requirement per day
 * @param maxTolerable per day at the diet's intake
 * @param status below, not-assured, meets, above-ceiling, unknown or no-requirement
 * @param origin reported, part-assumed or assumed
 */
public record DietLine(
    String nutrient,
    String unit,
    @Nullable Double supply,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double requirement,
    @Nullable Double maxTolerable,
    String status,
    String origin)
    implements Serializable {

  public DietLine {
    requireNonNull(nutrient, "nutrient");
    requireNonNull(unit, "unit");
    requireNonNull(status, "status");
    requireNonNull(origin, "origin");
  }

  /** Supply as a share of the requirement, %; null where either is unknown or nothing is needed. */
  public @Nullable Double percentOfRequirement() {
    return supply == null || requirement == null || requirement <= 0
        ? null
        : Double.valueOf(100 * supply / requirement);
  }
}
