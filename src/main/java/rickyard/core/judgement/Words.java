package rickyard.core.judgement;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as reasons write them: plain, at most {@code digits} decimals, no trailing zeros. */
final class Words {
  private Words() {}

  static String number(double value, int digits) {
    if (Double.isInfinite(value)) {
      return "unbounded";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** A number with two decimals, more for small ones. */
  static String number(double value) {
    double size = Math.abs(value);
    return number(value, size >= 100 ? 0 : size >= 1 ? 2 : 4);
  }

  /** A standard uncertainty: two decimals, below one two figures that count. */
  static String uncertainty(double u) {
    if (u == 0 || Math.abs(u) >= 1) {
      return number(u);
    }
    BigDecimal rounded = BigDecimal.valueOf(u).round(new MathContext(2, RoundingMode.HALF_UP));
    return rounded.stripTrailingZeros().toPlainString();
  }
}
