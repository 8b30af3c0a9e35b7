package rickyard.intake.grid.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A stored number in plain digits. */
final class Plain {
  /** Spreadsheets keep fifteen digits of what is typed; what lies beyond them is binary noise. */
  private static final MathContext TYPED = new MathContext(15, RoundingMode.HALF_EVEN);

  private static final int LONGEST = 40;

  private Plain() {}

  /** The number that was typed or computed: at most fifteen digits, no noise behind them. */
  static BigDecimal number(BigDecimal stored) {
    return stripped(stored.round(TYPED));
  }

  /** The number that a binary one stands for. */
  static BigDecimal number(double stored) {
    return number(new BigDecimal(Double.toString(stored)));
  }

  private static BigDecimal stripped(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }

  /** Whether plain digits show it in a line; nothing a laboratory prints is longer. */
  static boolean fits(BigDecimal number) {
    return number.precision() - number.scale() < LONGEST && number.scale() < LONGEST;
  }
}
