package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How a layout prints one analyte: never its figures.
 *
 * @param analyte its code, as the reader names the line (an open name such as NSC stays open)
 * @param labels its names as printed, in lower case
 * @param units units that the page gives its figures; an empty word where it gives none
 * @param bases bases that the page gives its figures, af or dm; an empty word where it gives none;
 *     no word at all for what has no basis
 */
public record LayoutLine(
    String analyte, SortedSet<String> labels, SortedSet<String> units, SortedSet<String> bases)
    implements Serializable {

  public LayoutLine {
    requireNonNull(analyte, "analyte");
    labels = Collections.unmodifiableSortedSet(new TreeSet<>(labels));
    units = Collections.unmodifiableSortedSet(new TreeSet<>(units));
    bases = Collections.unmodifiableSortedSet(new TreeSet<>(bases));
  }

  /** The same line with what another report prints of it besides. */
  LayoutLine with(LayoutLine other) {
    return new LayoutLine(
        analyte, union(labels, other.labels), union(units, other.units), union(bases, other.bases));
  }

  private static SortedSet<String> union(Collection<String> a, Collection<String> b) {
    SortedSet<String> all = new TreeSet<>(a);
    all.addAll(b);
    return all;
  }
}
