package rickyard.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A number as the CSV and JSON outputs write it: plain decimal digits with a point, no exponent, no
 * grouping, rounded half-up, trailing zeros trimmed.
 *
 * <p>From 1 upwards six decimals are kept, below it six significant digits but never more than
 * twelve decimals. What is unknown, open or not a number stays blank.
 */
public final class PlainNumber {
  private static final int DECIMALS = 6;
  private static final int MOST_DECIMALS = 12;

  private PlainNumber() {}

  /** The number to be written; empty where there is none. */
  public static Optional<BigDecimal> find(@Nullable Double number) {
    if (number == null || !Double.isFinite(number)) {
      return Optional.empty();
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    BigDecimal kept = exact.setScale(decimals(exact), RoundingMode.HALF_UP).stripTrailingZeros();
    return Optional.of(kept.scale() < 0 ? kept.setScale(0) : kept);
  }

  private static int decimals(BigDecimal exact) {
    int zerosAfterPoint = exact.scale() - exact.precision();
    boolean small = exact.abs().compareTo(BigDecimal.ONE) < 0;
    return small ? Math.min(MOST_DECIMALS, DECIMALS + zerosAfterPoint) : DECIMALS;
  }

  /** Its digits; blank where there is none. */
  public static String of(@Nullable Double number) {
    return find(number).map(BigDecimal::toPlainString).orElse("");
  }
}
