package rickyard.intake.check;

import static java.util.Objects.requireNonNull;

import rickyard.core.quantity.Unit;

/**
 * How a figure is printed.
 *
 * @param unit the unit that the page gives for it
 * @param decimals digits behind its decimal mark
 */
public record Print(Unit unit, int decimals) {
  public Print {
    requireNonNull(unit, "unit");
    if (decimals < 0) {
      throw new IllegalArgumentException("decimals count from 0, were " + decimals);
    }
  }
}
