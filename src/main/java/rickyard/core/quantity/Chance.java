package rickyard.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A chance as people read it, the same wherever it stands. */
public final class Chance {
  private static final double HUNDRED = 100;
  private static final double SMALLEST = 0.1;
  private static final double EDGE = 10;

  private Chance() {}

  /**
   * The chance in per cent: one decimal below 10 % and above 99 %, whole numbers between. It is
   * never said to be 0 % or 100 %: the uncertainty is itself only known so well.
   *
   * @param chance from 0 to 1
   * @throws IllegalArgumentException if it is no number from 0 to 1
   */
  public static String words(double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException("a chance is from 0 to 1, was " + chance);
    }
    double percent = HUNDRED * chance;
    if (percent < SMALLEST) {
      return "less than 0.1 %";
    }
    if (percent > HUNDRED - SMALLEST) {
      return "more than 99.9 %";
    }
    boolean edge = percent < EDGE || percent > HUNDRED - 1;
    BigDecimal shown = BigDecimal.valueOf(percent).setScale(edge ? 1 : 0, RoundingMode.HALF_UP);
    return shown.stripTrailingZeros().toPlainString() + " %";
  }

  /** The chance of what is only known from below. */
  public static String atLeast(double chance) {
    String words = words(chance);
    return words.startsWith("more than") ? words : "at least " + words;
  }
}
