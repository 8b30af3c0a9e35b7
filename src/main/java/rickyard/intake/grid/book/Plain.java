package rickyard.intake.grid.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A stored number in plain digits. */
final class Plain {
  /** Spreadsheets keep fifteen digits of what is typed; what lies beyond them is binary noise. */
  private static final MathContext TYPED = new MathContext(15, RoundingMode.HALF_EVEN);

  private static final int LONGEST = 40;
  private static final int LONGEST_RAW = 400;

  private Plain() {}

  /** The number that was typed or computed: at most fifteen digits, no noise behind them. */
  static BigDecimal number(BigDecimal stored) {
    return stripped(stored.round(TYPED));
  }

  /**
   * The number that a text of the file stands for.
   *
   * @throws NumberFormatException if it is none, or far longer than any
   */
  static BigDecimal number(String raw) {
    checkLength(raw);
    return number(new BigDecimal(raw.strip()));
  }

  /** Refuses digits without end before anything counts them. */
  static void checkLength(String raw) {
    if (raw.length() > LONGEST_RAW) {
      throw new NumberFormatException("too long for a number");
    }
  }

  /** The number that a binary one stands for. */
  static BigDecimal number(double stored) {
    return number(new BigDecimal(Double.toString(stored)));
  }

  private static BigDecimal stripped(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.scale() < 0 && bare.scale() > -LONGEST ? bare.setScale(0) : bare;
  }

  /** Whether plain digits show it in a line; nothing a laboratory prints is longer. */
  static boolean fits(BigDecimal number) {
    return (long) number.precision() - number.scale() < LONGEST && number.scale() < LONGEST;
  }
}
