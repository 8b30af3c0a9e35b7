package rickyard.core.judgement;

import java.math.BigDecimal;
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

  /** A chance in whole per cent, with the ends said honestly. */
  static String percent(double chance) {
    if (chance > 0 && chance < 0.005) {
      return "below 1 %";
    }
    if (chance < 1 && chance >= 0.995) {
      return "above 99 %";
    }
    return number(chance * 100, 0) + " %";
  }
}
