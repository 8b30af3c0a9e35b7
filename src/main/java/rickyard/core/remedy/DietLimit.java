package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

/**
 * A limit of the whole diet, on its dry matter.
 *
 * @param id row of the limits table
 * @param quantity key of {@link Candidate#contents()}, for example {@code nsc_wsc}
 * @param words the quantity in the field's words
 * @param value the bound, in the unit of the contents, at least 0
 * @param isMaximum whether more is worse
 * @param z factor of the guard band {@code z · u}, at least 0
 * @param isAskedWhenMissing whether an item without the content may not be added; otherwise it
 *     counts as 0 here and the diet code decides
 */
public record DietLimit(
    String id,
    String quantity,
    String words,
    double value,
    boolean isMaximum,
    double z,
    boolean isAskedWhenMissing) {
  public DietLimit {
    requireNonNull(id, "id");
    requireNonNull(quantity, "quantity");
    requireNonNull(words, "words");
    if (!(value >= 0) || !(z >= 0) || !Double.isFinite(value) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("limit and z must be finite and >= 0: " + id);
    }
  }
}
