package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

/**
 * What a horse needs of a nutrient; a wish for the search, judged by the diet code.
 *
 * @param code nutrient, as in {@link Candidate#nutrientsPerKgDm()}
 * @param perDay amount, above 0, in the unit of the contents
 */
public record NutrientNeed(String code, double perDay) {
  public NutrientNeed {
    requireNonNull(code, "code");
    if (!(perDay > 0 && Double.isFinite(perDay))) {
      throw new IllegalArgumentException("need of " + code + " must be above 0, was " + perDay);
    }
  }
}
