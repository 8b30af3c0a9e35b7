package rickyard.report.csv;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.tables.FormulaGuard;

/**
 * One cell of a CSV output: text, which is guarded against being run as a formula, or a number,
 * which is written plainly (decimal point, no exponent, no grouping, no minus before zero), or
 * nothing.
 */
public final class CsvField {
  private static final CsvField BLANK = new CsvField("");

  private final String cell;

  private CsvField(String cell) {
    this.cell = cell;
  }

  /**
   * Text; NUL characters are dropped and broken surrogates replaced, because neither survives the
   * way through other programs.
   */
  public static CsvField text(String text) {
    requireNonNull(text, "text");
    return new CsvField(FormulaGuard.protect(writable(text)));
  }

  /** Text, or nothing where there is none. */
  public static CsvField text(Optional<?> text) {
    return text.map(found -> text(found.toString())).orElse(BLANK);
  }

  /** An empty cell. */
  public static CsvField blank() {
    return BLANK;
  }

  /** A whole number. */
  public static CsvField number(long value) {
    return new CsvField(Long.toString(value));
  }

  /**
   * A number with a fixed count of decimals, rounded half up.
   *
   * @param value finite
   * @param decimals from 0
   */
  public static CsvField number(double value, int decimals) {
    return number(exact(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** A number with a fixed count of decimals, or nothing where there is none. */
  public static CsvField number(OptionalDouble value, int decimals) {
    return value.isPresent() ? number(value.getAsDouble(), decimals) : BLANK;
  }

  /** A number unrounded, in as many decimals as tell it apart from its neighbours. */
  public static CsvField number(double value) {
    BigDecimal stripped = exact(value).stripTrailingZeros();
    return number(stripped.scale() < 0 ? stripped.setScale(0) : stripped);
  }

  /** A decimal number as it stands, its trailing zeros kept. */
  public static CsvField number(BigDecimal value) {
    return new CsvField(value.toPlainString());
  }

  /** The end of an interval, rounded half up; an open end is an empty cell. */
  public static CsvField bound(double value, int decimals) {
    return Double.isInfinite(value) ? BLANK : number(value, decimals);
  }

  private static BigDecimal exact(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a number must be finite, was " + value);
    }
    return BigDecimal.valueOf(value);
  }

  private static String writable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> c != 0)
        .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /** What stands in the file between the delimiters, before quoting. */
  String cell() {
    return cell;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CsvField field && field.cell.equals(cell);
  }

  @Override
  public int hashCode() {
    return cell.hashCode();
  }

  @Override
  public String toString() {
    return cell;
  }
}
