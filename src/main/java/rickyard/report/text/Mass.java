package rickyard.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import rickyard.core.quantity.Pound;

/** Amounts on the scale: kept in kg, shown in kg or lb. */
public enum Mass {
  KG,
  LB;

  private static final int SMALL_DECIMALS = 3;
  private static final double SMALL = 0.1;
  private static final double LARGE = 100;

  /** The unit that an office or client wants; kg unless it says lb. */
  public static Mass named(String units) {
    return units.equals("lb") ? LB : KG;
  }

  /** Pounds of that many kilograms, not rounded. */
  public static double pounds(double kg) {
    return kg / Pound.KG;
  }

  /** The unit's sign. */
  public String unit() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Its digits without the unit: three decimals below 0.1, two below 100, none above. */
  public String digits(double kg) {
    double amount = this == LB ? pounds(kg) : kg;
    double size = Math.abs(amount);
    int decimals = size < SMALL ? SMALL_DECIMALS : size < LARGE ? 2 : 0;
    return trimmed(BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** Digits and unit, for example {@code 7.5 kg}. */
  public String words(double kg) {
    return digits(kg) + " " + unit();
  }

  /** The other unit, for a reader whose scale shows that. */
  public Mass other() {
    return this == KG ? LB : KG;
  }

  private static String trimmed(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
