package rickyard.report.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import rickyard.core.quantity.Chance;

/** Numbers as the pages show them: few digits, half-up, a point, a word where there is none. */
public final class Shown {
  /** What stands where nothing is known. */
  public static final String UNKNOWN = "unknown";

  private static final String NOT_KNOWN = "not known";

  private static final int HUNDRED = 100;
  private static final int YEAR = 365;

  /** A censored figure stands for its interval from nothing to what it is under: by its half. */
  private static final double CENSORED = 1.99;

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

  /**
   * A figure that is held against a limit. One that could not be judged is not known, whatever its
   * known part makes; one with a part that nobody knows is the least that it can be.
   *
   * @param verdict of the limit
   * @param low the least that it can be; null if unknown
   * @param high the most that it can be; null if nobody knows
   */
  public static String figure(
      String verdict,
      @Nullable Double value,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double u) {
    boolean open = verdict.equals("cannot-judge");
    return value == null || (open && high == null) ? NOT_KNOWN : bounded(value, low, high, u);
  }

  /**
   * A figure with what bounds it: one of which only the most is known, as in a report's {@code
   * <50}, is under that; one with a part that nobody knows is the least that it can be.
   *
   * @param low the least that it can be; null if unknown
   * @param high the most that it can be; null if nobody knows
   */
  public static String bounded(
      @Nullable Double value, @Nullable Double low, @Nullable Double high, @Nullable Double u) {
    if (value == null) {
      return UNKNOWN;
    }
    if (high == null) {
      return "at least " + withUncertainty(value, u);
    }
    return isCensored(value, low, high) ? "under " + number(high) : withUncertainty(value, u);
  }

  /** Whether of a figure only the most is known: it stands for all from nothing to that. */
  public static boolean isCensored(
      @Nullable Double value, @Nullable Double low, @Nullable Double high) {
    return value != null
        && low != null
        && high != null
        && low == 0
        && value > 0
        && high >= CENSORED * value;
  }

  /** Days that hay lasts: whole ones, and of very many only that. */
  public static String days(@Nullable Double days) {
    if (days == null || !Double.isFinite(days)) {
      return UNKNOWN;
    }
    return days > YEAR ? "over a year" : Long.toString((long) Math.floor(days));
  }

  /** A chance in per cent: one decimal below 10 %, whole above; never 0 % and never 100 %. */
  public static String chance(@Nullable Double chance) {
    if (chance == null || !Double.isFinite(chance)) {
      return UNKNOWN;
    }
    return Chance.words(chance);
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
