package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

/**
 * A limit of one bucket meal, never of long forage.
 *
 * @param id row of the limits table
 * @param quantity key of {@link Candidate#contents()}, contents in % of dry matter
 * @param words the quantity in the field's words
 * @param maxGrams the bound, g per meal of this horse (a bound per kg of body weight is multiplied
 *     by the caller), at least 0
 * @param z factor of the guard band, at least 0
 */
public record MealLimit(String id, String quantity, String words, double maxGrams, double z) {
  public MealLimit {
    requireNonNull(id, "id");
    requireNonNull(quantity, "quantity");
    requireNonNull(words, "words");
    if (!(maxGrams >= 0) || !(z >= 0) || !Double.isFinite(maxGrams) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("limit and z must be finite and >= 0: " + id);
    }
  }
}
