package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Comparator;

/**
 * The heading of a column of a layout.
 *
 * @param words as printed, in lower case, without figures
 * @param role what the reader takes the column to hold; empty if the heading does not say
 * @param basis af or dm; empty if the heading says none
 * @param unit its unit; empty if the heading says none
 */
public record LayoutHeading(String words, String role, String basis, String unit)
    implements Serializable, Comparable<LayoutHeading> {

  private static final Comparator<LayoutHeading> ORDER =
      Comparator.comparing(LayoutHeading::words)
          .thenComparing(LayoutHeading::role)
          .thenComparing(LayoutHeading::basis)
          .thenComparing(LayoutHeading::unit);

  public LayoutHeading {
    requireNonNull(words, "words");
    requireNonNull(role, "role");
    requireNonNull(basis, "basis");
    requireNonNull(unit, "unit");
  }

  @Override
  public int compareTo(LayoutHeading other) {
    return ORDER.compare(this, other);
  }

  /** Whether both say something, and not the same, of what the column holds. */
  boolean contradicts(LayoutHeading other) {
    return differ(role, other.role) || differ(basis, other.basis) || differ(unit, other.unit);
  }

  private static boolean differ(String a, String b) {
    return !a.isEmpty() && !b.isEmpty() && !a.equals(b);
  }
}
