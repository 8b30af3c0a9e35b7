package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * Standard uncertainty of a feed's value by its kind.
 *
 * @param kind batch or typical
 * @param analyte code, or {@code *} for every other one
 * @param u absolute, canonical unit; empty where it is relative
 * @param relativePercent relative, % of the value; empty where it is absolute
 * @param source table row
 */
public record KindRule(
    String kind, String analyte, OptionalDouble u, OptionalDouble relativePercent, Source source) {
  public KindRule {
    requireNonNull(kind, "kind");
    requireNonNull(analyte, "analyte");
    requireNonNull(source, "source");
    if (u.isPresent() == relativePercent.isPresent()) {
      throw new IllegalArgumentException("either an absolute or a relative uncertainty");
    }
  }

  double uOf(double value) {
    return u.isPresent() ? u.getAsDouble() : value * relativePercent.orElse(0) / 100;
  }
}
