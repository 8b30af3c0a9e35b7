package rickyard.core.season;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Unit;

/**
 * Two laboratories on the same lots, or one laboratory on the same lots again.
 *
 * @param first whose value is taken, or whose later test is
 * @param second whose value is taken off, or whose earlier test is; the same laboratory for tests
 *     made again
 * @param quantity what was tested
 * @param unit on dry matter
 * @param lots that both have tested, each counted once
 * @param difference first less second; empty where lots are too few
 * @param firstMethods how the first obtained it
 * @param secondMethods how the second did
 * @param daysLater mean days by which the first's samples are the later, over lots with both days
 */
public record LaboratoryPair(
    Laboratory first,
    Laboratory second,
    AnalyteCode quantity,
    Unit unit,
    int lots,
    Optional<PairedDifference> difference,
    SortedSet<Method> firstMethods,
    SortedSet<Method> secondMethods,
    OptionalDouble daysLater) {

  public LaboratoryPair {
    requireNonNull(first, "first");
    requireNonNull(second, "second");
    requireNonNull(quantity, "quantity");
    requireNonNull(unit, "unit");
    requireNonNull(difference, "difference");
    firstMethods = Collections.unmodifiableSortedSet(new TreeSet<>(firstMethods));
    secondMethods = Collections.unmodifiableSortedSet(new TreeSet<>(secondMethods));
    requireNonNull(daysLater, "daysLater");
  }

  /** Whether it is one laboratory that tested lots again. */
  public boolean isAgain() {
    return first.key().equals(second.key());
  }

  /** Whether chance alone would rarely give such a difference. */
  public boolean isRare(OverTimeRules rules) {
    return difference.filter(d -> d.chance() < rules.rareChance()).isPresent();
  }
}
