package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import rickyard.core.forage.AnalyteCode;

/** The content, % DM, that an item of a role takes when it has no value and is a small share. */
public record HighValue(String role, AnalyteCode analyte, double value, Source source) {
  public HighValue {
    requireNonNull(role, "role");
    requireNonNull(analyte, "analyte");
    requireNonNull(source, "source");
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException("a high value is finite and >= 0, was " + value);
    }
  }
}
