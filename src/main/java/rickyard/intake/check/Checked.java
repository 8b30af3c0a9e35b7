package rickyard.intake.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;

/**
 * What the relations say of a sample.
 *
 * @param checks every relation tried, in a fixed order
 * @param touched the analytes whose figure must not be used before a person has looked, each with
 *     the stable code of the reason
 */
public record Checked(List<Check> checks, SortedMap<AnalyteCode, String> touched) {
  public Checked {
    checks = List.copyOf(checks);
    touched = Collections.unmodifiableSortedMap(new TreeMap<>(touched));
  }

  /** Both; the first reason given for a figure stays. */
  Checked plus(Checked other) {
    List<Check> all = new ArrayList<>(checks);
    all.addAll(other.checks);
    SortedMap<AnalyteCode, String> either = new TreeMap<>(other.touched);
    either.putAll(touched);
    return new Checked(all, either);
  }

  /** How many relations that are more than experience are broken. */
  long faults() {
    return checks.stream().filter(c -> !c.holds() && c.kind() != Check.Kind.SOFT).count();
  }
}
