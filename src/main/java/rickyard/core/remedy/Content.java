package rickyard.core.remedy;

/**
 * What a limit counts, in one item: the best value, or the upper end where the value is censored or
 * a guarantee.
 *
 * @param value per unit of dry matter, in the limit's unit (for example % of dry matter)
 * @param u its standard uncertainty, same unit, at least 0
 */
public record Content(double value, double u) {
  public Content {
    if (!Double.isFinite(value) || !(u >= 0) || !Double.isFinite(u)) {
      throw new IllegalArgumentException("content must be finite, was " + value + " ± " + u);
    }
  }
}
