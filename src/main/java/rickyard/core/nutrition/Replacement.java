package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * A delivery that takes the place of a lot in a horse's ration.
 *
 * @param delivery the row of the register
 * @param kgBefore kg as fed per day of the lot replaced
 * @param kgAfter kg as fed per day of the new lot: the same dry matter
 * @param isOpeningKnown whether the register says when it opens; if not, someone must be asked
 */
public record Replacement(
    Delivery delivery, double kgBefore, double kgAfter, boolean isOpeningKnown) {
  public Replacement {
    requireNonNull(delivery, "delivery");
  }
}
