package rickyard.core.season;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the tests of one day say of one lot: samples of one day are one sampling.
 *
 * @param day of sampling, else of the report
 * @param value their mean
 * @param u the largest of their standard uncertainties, above 0
 * @param tests how many
 * @param laboratories who made them
 */
public record DayValue(
    LocalDate day, double value, double u, int tests, SortedSet<Laboratory> laboratories) {
  public DayValue {
    requireNonNull(day, "day");
    laboratories = Collections.unmodifiableSortedSet(new TreeSet<>(laboratories));
  }
}
