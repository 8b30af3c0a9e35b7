package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import rickyard.core.forage.AnalyteCode;

/**
 * What a forage of a material holds when nobody reported it.
 *
 * @param material as in the register of lots
 * @param analyte which
 * @param mean canonical unit on dry matter; % as fed for dry matter; % of crude protein where
 *     {@code ofProtein}
 * @param u spread between lots (k = 1), same unit
 * @param ofProtein whether the value is a share of the item's own crude protein
 * @param source table row
 */
public record TypicalValue(
    String material, AnalyteCode analyte, double mean, double u, boolean ofProtein, Source source) {
  public TypicalValue {
    requireNonNull(material, "material");
    requireNonNull(analyte, "analyte");
    requireNonNull(source, "source");
    if (!(mean >= 0 && Double.isFinite(mean) && u >= 0 && Double.isFinite(u))) {
      throw new IllegalArgumentException("mean and u must be finite and >= 0");
    }
  }
}
