package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What another source gives in place of a number of the tables: both are kept, one is in force.
 *
 * @param value in the unit of the number in force
 * @param isSaid whether a page that uses the number must name it; the others are on record only
 * @param words how the other source comes to it
 * @param source row of {@code other-values.csv}
 */
public record OtherValue(double value, boolean isSaid, String words, Source source) {
  /** Two numbers closer than this share of the larger one are the same number. */
  private static final double TIE = 1e-9;

  public OtherValue {
    requireNonNull(words, "words");
    requireNonNull(source, "source");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, was " + value);
    }
  }

  /** Those that a page must name beside a number in force: the ones that are not that number. */
  static List<OtherValue> said(double inForce, List<OtherValue> others) {
    return others.stream().filter(o -> o.isSaid && o.differsFrom(inForce)).toList();
  }

  private boolean differsFrom(double inForce) {
    return Math.abs(value - inForce) > TIE * Math.max(Math.abs(value), Math.abs(inForce));
  }
}
