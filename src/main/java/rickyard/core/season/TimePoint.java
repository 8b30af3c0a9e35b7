package rickyard.core.season;

/**
 * A value at a time.
 *
 * @param x days or years from any start
 * @param y the value
 * @param u its standard uncertainty, above 0
 */
public record TimePoint(double x, double y, double u) {
  public TimePoint {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !(u > 0) || !Double.isFinite(u)) {
      throw new IllegalArgumentException("x and y must be finite and u above 0");
    }
  }
}
