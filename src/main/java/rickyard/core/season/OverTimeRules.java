package rickyard.core.season;

import java.util.List;
import rickyard.core.forage.AnalyteCode;

/**
 * From how many tests on something is said.
 *
 * @param quantities what is looked at, the first of them first on the page
 * @param leastPairs lots tested by both laboratories, at least 2
 * @param leastTests days of testing one lot for a trend, at least 3
 * @param leastYears years of one field and cutting for a trend, at least 3
 * @param rareChance a chance below which something is called rare, in (0, 0.5]
 */
public record OverTimeRules(
    List<AnalyteCode> quantities,
    int leastPairs,
    int leastTests,
    int leastYears,
    double rareChance) {

  public OverTimeRules {
    quantities = List.copyOf(quantities);
    if (quantities.isEmpty()) {
      throw new IllegalArgumentException("at least one quantity");
    }
    if (leastPairs < 2 || leastTests < 3 || leastYears < 3) {
      throw new IllegalArgumentException("at least 2 pairs, 3 tests and 3 years");
    }
    if (!(rareChance > 0 && rareChance <= 0.5)) {
      throw new IllegalArgumentException("a rare chance is in (0, 0.5], was " + rareChance);
    }
  }
}
