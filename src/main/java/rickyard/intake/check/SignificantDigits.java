package rickyard.intake.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers in the sentences of checks: four significant digits, as {@code %.4g} writes them, but
 * without the cost of a format, which a long table pays some million times.
 */
final class SignificantDigits {
  private static final int DIGITS = 4;
  private static final MathContext ROUNDING = new MathContext(DIGITS, RoundingMode.HALF_UP);
  private static final double LEAST = 0.001;
  private static final double MOST = 9_999;

  private SignificantDigits() {}

  /** The number in plain digits; {@code open} where it has no end. */
  static String of(double value) {
    if (Double.isInfinite(value)) {
      return "open";
    }
    if (!(value >= LEAST && value <= MOST)) {
      return String.format(Locale.ROOT, "%.4g", value);
    }
    BigDecimal rounded = new BigDecimal(Double.toString(value)).round(ROUNDING);
    int wholeDigits = rounded.precision() - rounded.scale();
    return rounded.setScale(DIGITS - wholeDigits, RoundingMode.UNNECESSARY).toPlainString();
  }
}
