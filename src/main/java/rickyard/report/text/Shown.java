package rickyard.report.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Numbers as the pages show them: few digits, half-up, a point, a word where there is none. */
public final class Shown {
  /** What stands where nothing is known. */
  public static final String UNKNOWN = "unknown";

  private static final int HUNDRED = 100;
  private static final double PER_CENT_SMALLEST = 0.1;

  private Shown() {}

  /** Two decimals below 100, none from 1000, three significant digits below 0.1. */
  public static String number(@Nullable Double number) {
    if (number == null || !Double.isFinite(number)) {
      return UNKNOWN;
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    double size = Math.abs(number);
    if (size < 0.1) {
      return plain(exact.round(new MathContext(2, RoundingMode.HALF_UP)));
    }
    int decimals = size < HUNDRED ? 2 : size < 10 * HUNDRED ? 1 : 0;
    return plain(exact.setScale(decimals, RoundingMode.HALF_UP));
  }

  /** A value with its standard uncertainty, for example {@code 9.4 ± 1.03}. */
  public static String withUncertainty(@Nullable Double value, @Nullable Double u) {
    if (value == null || u == null || !Double.isFinite(u) || u == 0) {
      return number(value);
    }
    return number(value) + " ± " + number(u);
  }

  /** A chance in per cent: one decimal below 10 %, whole above; never 0 % and never 100 %. */
  public static String chance(@Nullable Double chance) {
    if (chance == null || !Double.isFinite(chance)) {
      return UNKNOWN;
    }
    double percent = HUNDRED * chance;
    if (percent < PER_CENT_SMALLEST) {
      return "less than 0.1 %";
    }
    if (percent > HUNDRED - PER_CENT_SMALLEST) {
      return "more than 99.9 %";
    }
    boolean edge = percent < 10 || percent > 99;
    BigDecimal shown = BigDecimal.valueOf(percent).setScale(edge ? 1 : 0, RoundingMode.HALF_UP);
    return plain(shown) + " %";
  }

  /** A share in whole per cent. */
  public static String share(double part, double whole) {
    if (whole <= 0) {
      return UNKNOWN;
    }
    return plain(BigDecimal.valueOf(HUNDRED * part / whole).setScale(0, RoundingMode.HALF_UP))
        + " %";
  }

  /** Money or bags: two decimals kept, blank if unknown. */
  public static String twoDecimals(@Nullable Double number) {
    return number == null || !Double.isFinite(number)
        ? UNKNOWN
        : BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  /** A number of things with its noun, for example {@code 1 horse}, {@code 3 horses}. */
  public static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  private static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
