package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.judgement.Bound;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Verdict;
import rickyard.core.quantity.Measured;

/**
 * For which groups a lot might clear after a second test, and with what chance.
 *
 * @param groups for which it does not clear now and might
 * @param chances of those groups whose chance can be told
 */
record RetestOutlook(SortedSet<String> groups, SortedMap<String, Double> chances) {

  RetestOutlook {
    groups = Collections.unmodifiableSortedSet(new TreeSet<>(groups));
    chances = Collections.unmodifiableSortedMap(new TreeMap<>(chances));
  }

  /**
   * What a test may say, the likelier first: the groups then cleared and how likely just that is.
   */
  record Outcome(SortedSet<String> cleared, double chance) {}

  /**
   * The outlook of a lot.
   *
   * @param wanted groups that lack hay
   * @param cores of the second test
   */
  static RetestOutlook of(
      String lot,
      SortedSet<String> wanted,
      LotStandings standings,
      Optional<AccountedAnalysis> analysis,
      int cores) {
    SortedSet<String> groups = new TreeSet<>();
    SortedMap<String, Double> chances = new TreeMap<>();
    for (String group : wanted) {
      List<Verdict> own = standings.deciding(lot, List.of(group));
      List<Verdict> against = own.stream().filter(v -> !v.word().isCleared()).toList();
      if (against.isEmpty() || against.stream().anyMatch(RetestOutlook::isNoSugarOfTheGroup)) {
        continue;
      }
      List<AnalyteCode> codes = against.stream().map(v -> v.limit().analyte()).distinct().toList();
      if (codes.size() == 1) {
        groups.add(group);
        List<Verdict> same =
            own.stream().filter(v -> v.limit().analyte().equals(codes.get(0))).toList();
        analysis
            .flatMap(a -> chance(a, same, cores))
            .ifPresent(chance -> chances.put(group, chance));
      }
    }
    return new RetestOutlook(groups, chances);
  }

  /**
   * What stands against every horse, or below a minimum, is not mended by a second test of this.
   */
  private static boolean isNoSugarOfTheGroup(Verdict verdict) {
    return verdict.limit().group().equals(Limit.ALL) || verdict.limit().bound() != Bound.MAX;
  }

  private static Optional<Double> chance(
      AccountedAnalysis analysis, List<Verdict> verdicts, int cores) {
    Verdict first = verdicts.get(0);
    AnalyteCode code = first.limit().analyte();
    Optional<Measured> value = first.value().filter(Measured::isBoundedAbove);
    Optional<Measured> canonical = analysis.analysis().find(code);
    Optional<ErrorBudget> budget = analysis.findBudget(code);
    if (value.isEmpty() || canonical.isEmpty() || budget.isEmpty() || !(value.get().u() > 0)) {
      return Optional.empty();
    }
    double toLimit = canonical.get().unit().convert(1, first.limit().unit().unit());
    double v = budget.get().u(Math.max(cores, budget.get().cores()), true) * toLimit;
    double u = value.get().u();
    if (!(v > 0)) {
      return Optional.empty();
    }
    double both = RetestChance.combinedU(u, v);
    double threshold =
        verdicts.stream()
            .map(Verdict::limit)
            .mapToDouble(l -> l.value() - l.guardFactor() * both)
            .min()
            .orElseThrow();
    return Optional.of(RetestChance.atMost(value.get().upper(), u, v, threshold));
  }

  /**
   * What the test may say. A mean that clears for one group clears for every group that allows
   * more, so that the outcomes are nested; the groups without a chance are in none.
   */
  List<Outcome> outcomes() {
    List<Double> levels = chances.values().stream().distinct().sorted().toList();
    List<Outcome> found = new ArrayList<>();
    double below = 0;
    for (double level : levels) {
      SortedSet<String> cleared = new TreeSet<>();
      chances.forEach(
          (group, chance) -> {
            if (chance >= level) {
              cleared.add(group);
            }
          });
      found.add(new Outcome(cleared, level - below));
      below = level;
    }
    return found;
  }

  /** Chance of clearing for any of them. */
  double best() {
    return chances.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
