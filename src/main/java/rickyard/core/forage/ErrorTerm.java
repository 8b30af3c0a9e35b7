package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One row of {@code config/uncertainties.csv}.
 *
 * @param kind lab, core, cores or sum-correlation
 * @param analyte analyte code, or {@code *} for whatever has no row of its own
 * @param method nir, wet or any
 * @param material code of a {@link MaterialClass}, or any
 * @param value standard uncertainty (k = 1) in the analyte's canonical unit, or % of the figure
 * @param relative whether {@code value} is % of the figure itself
 * @param source key of the bibliography
 * @param status verified, memory, assumed …
 */
public record ErrorTerm(
    String kind,
    String analyte,
    String method,
    String material,
    double value,
    boolean relative,
    String source,
    String status) {

  public ErrorTerm {
    requireNonNull(kind, "kind");
    requireNonNull(analyte, "analyte");
    requireNonNull(method, "method");
    requireNonNull(material, "material");
    requireNonNull(source, "source");
    requireNonNull(status, "status");
    if (!Double.isFinite(value) || (value < 0 && !kind.equals("sum-correlation"))) {
      throw new IllegalArgumentException("an uncertainty must be finite and >= 0, was " + value);
    }
  }

  /** The term for a figure of this size, in its unit. */
  double at(double figure) {
    return relative ? value * figure / 100 : value;
  }

  /** How particular the row is; a row that does not fit is -1. */
  int fit(String kind, AnalyteCode code, String method, MaterialClass material) {
    boolean own = analyte.equals(code.value());
    boolean ownMethod = this.method.equals(method);
    boolean ownMaterial = this.material.equals(material.code());
    if (!this.kind.equals(kind)
        || !(own || analyte.equals("*"))
        || !(ownMethod || this.method.equals("any"))
        || !(ownMaterial || this.material.equals("any"))) {
      return -1;
    }
    return (own ? 4 : 0) + (ownMaterial ? 2 : 0) + (ownMethod ? 1 : 0);
  }
}
