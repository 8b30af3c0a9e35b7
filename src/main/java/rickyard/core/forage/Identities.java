package rickyard.core.forage;

import rickyard.core.quantity.Cites;

/**
 * The exact relations between figures of one sample: what one figure must be, given others.
 *
 * <p>All figures are spans, so that rounding of every printed figure is allowed for and nothing
 * else.
 */
public final class Identities {
  /** Printed relative feed values differ by 1 with the rounding of the steps. */
  public static final double RFV_MARGIN = 1;

  private Identities() {}

  /** Dry matter from moisture: {@code 100 - moisture}, % as fed. */
  @Cites(source = "definition", locator = "dry matter = 100 - moisture")
  public static Span dryMatter(Span moisture) {
    return Span.exactly(100).minus(moisture);
  }

  /** The share of as-fed figure and dry-matter figure: equal to dry matter / 100 on every line. */
  @Cites(source = "definition", locator = "as fed = dry matter value x DM / 100")
  public static Span ratio(Span asFed, Span dryMatterValue) {
    return asFed.over(dryMatterValue);
  }

  /** NSC from its parts: {@code carbohydrate + starch}, same unit and basis. */
  @Cites(source = "definition", locator = "NSC = WSC + starch, or ESC + starch")
  public static Span nonStructural(Span carbohydrate, Span starch) {
    return carbohydrate.plus(starch);
  }

  /**
   * NFC by difference: {@code total - CP - NDF - EE - ash}.
   *
   * @param total 100 on dry matter, dry matter % as fed
   * @return in %, same basis as the inputs
   */
  @Cites(source = "vetmedsci-2023-hay-table", locator = "Table 2, NFC = 100 - CP - NDF - fat - ash")
  public static Span nonFibre(Span total, Span cp, Span ndf, Span ee, Span ash) {
    return total.minus(cp).minus(ndf).minus(ee).minus(ash);
  }

  /**
   * Relative feed value: {@code (88.9 - 0.779 ADF) (120 / NDF) / 1.29}.
   *
   * @param adf % DM
   * @param ndf % DM, above 0
   */
  @Cites(
      source = "uwex-rfq",
      locator = "DDM = 88.9 - 0.779 ADF; DMI = 120 / NDF; RFV = DDM x DMI / 1.29")
  public static Span relativeFeedValue(Span adf, Span ndf) {
    Span digestible = Span.exactly(88.9).minus(adf.times(0.779));
    Span intake = Span.exactly(120).over(ndf);
    double low = Math.max(0, digestible.low()) * intake.low() / 1.29;
    double high = Math.max(0, digestible.high()) * intake.high() / 1.29;
    return new Span(low, Math.max(low, high));
  }

  /** Nitrate ion from nitrate nitrogen: {@code 62.0049 / 14.0067}, within 1 %. */
  @Cites(source = "definition", locator = "molar masses NO3 62.0049, N 14.0067 g/mol")
  public static Span nitrate(Span nitrateNitrogen) {
    Span exact = nitrateNitrogen.times(62.0049 / 14.0067);
    return new Span(exact.low() * 0.99, exact.high() * 1.01);
  }

  /** Calcium to phosphorus. */
  @Cites(source = "definition", locator = "Ca:P = Ca / P")
  public static Span calciumToPhosphorus(Span calcium, Span phosphorus) {
    return calcium.over(phosphorus);
  }

  /** Hemicellulose: {@code NDF - ADF}. */
  @Cites(source = "definition", locator = "hemicellulose = NDF - ADF")
  public static Span hemicellulose(Span ndf, Span adf) {
    return ndf.minus(adf);
  }
}
