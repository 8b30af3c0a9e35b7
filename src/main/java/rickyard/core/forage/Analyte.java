package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/**
 * One thing that laboratories analyse, as {@code config/analytes.csv} defines it.
 *
 * @param code its code in every output
 * @param name its name in plain English
 * @param unit the canonical unit
 * @param basis the canonical basis: dry matter for contents, as fed for dry matter and moisture
 *     themselves, none for indices and ratios
 * @param digits decimals shown on pages
 * @param order place in lists, from 1
 */
public record Analyte(AnalyteCode code, String name, Unit unit, Basis basis, int digits, int order)
    implements Serializable {

  public Analyte {
    requireNonNull(code, "code");
    requireNonNull(name, "name");
    requireNonNull(unit, "unit");
    requireNonNull(basis, "basis");
    if (digits < 0 || digits > 6) {
      throw new IllegalArgumentException("digits must be 0..6, were " + digits);
    }
  }

  /** Whether the figure shrinks with the water in the sample: as fed = dry matter × DM / 100. */
  public boolean scalesWithDryMatter() {
    return basis == Basis.DRY_MATTER;
  }
}
