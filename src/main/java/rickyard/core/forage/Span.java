package rickyard.core.forage;

import rickyard.core.quantity.Measured;

/**
 * The numbers that a printed figure may stand for: 9.4 is [9.35, 9.45].
 *
 * @param low lower end
 * @param high upper end, at least {@code low}; may be infinite
 */
public record Span(double low, double high) {

  public Span {
    if (Double.isNaN(low) || Double.isNaN(high) || high < low) {
      throw new IllegalArgumentException("ends out of order: " + low + ", " + high);
    }
  }

  /** What rounding and censoring leave open. */
  public static Span of(Measured measured) {
    return new Span(measured.low(), measured.high());
  }

  /** One number. */
  public static Span exactly(double value) {
    return new Span(value, value);
  }

  public Span plus(Span other) {
    return new Span(low + other.low, high + other.high);
  }

  public Span minus(Span other) {
    return new Span(low - other.high, high - other.low);
  }

  public Span times(double factor) {
    double a = low * factor;
    double b = high * factor;
    return new Span(Math.min(a, b), Math.max(a, b));
  }

  /** The quotient by a span above 0; open above where the divisor may be 0. */
  public Span over(Span divisor) {
    double top = divisor.low > 0 ? high / divisor.low : Double.POSITIVE_INFINITY;
    double bottom = divisor.high > 0 ? Math.max(0, low) / divisor.high : 0;
    return new Span(Math.min(bottom, top), top);
  }

  /** This span wider by {@code margin} at both ends. */
  public Span widened(double margin) {
    return new Span(low - margin, high + margin);
  }

  /** Whether some number lies in both. */
  public boolean meets(Span other) {
    double slack = 1e-9 * Math.max(1, Math.min(Math.abs(low), Math.abs(other.low)));
    return low <= other.high + slack && other.low <= high + slack;
  }

  public double middle() {
    return (low + high) / 2;
  }
}
