package rickyard.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts as a person reads them off a scale: small ones in grams or ounces. */
public final class Weighed {
  private static final double SMALL_KG = 0.2;
  private static final int GRAMS = 1000;
  private static final int OUNCES = 16;

  private Weighed() {}

  /** For example {@code 5.5 kg}, {@code 12.13 lb}, {@code 30 g}, {@code 1.1 oz}. */
  public static String words(Mass mass, double kg) {
    if (kg <= 0 || kg >= SMALL_KG) {
      return mass.words(kg);
    }
    return mass == Mass.KG
        ? rounded(kg * GRAMS, kg * GRAMS < 10 ? 1 : 0) + " g"
        : rounded(Mass.pounds(kg) * OUNCES, 1) + " oz";
  }

  private static String rounded(double amount, int decimals) {
    BigDecimal shown = BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal bare = shown.stripTrailingZeros();
    return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
  }
}
