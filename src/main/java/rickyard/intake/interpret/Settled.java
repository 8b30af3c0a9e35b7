package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;

/**
 * One figure for each analyte of a sample, with its as-fed twin where both are printed.
 *
 * @param chosen the figure that counts, by code, in the order of the page
 * @param asFed the as-fed figure printed beside a dry-matter one
 */
record Settled(List<Resolved> chosen, SortedMap<AnalyteCode, Resolved> asFed) {

  static Settled of(List<Finding> findings) {
    SortedMap<AnalyteCode, List<Resolved>> groups = new TreeMap<>();
    List<AnalyteCode> order = new ArrayList<>();
    for (Finding finding : findings) {
      Resolved resolved = Resolver.resolve(finding);
      AnalyteCode code = resolved.code();
      if (!groups.containsKey(code)) {
        order.add(code);
      }
      groups.computeIfAbsent(code, c -> new ArrayList<>()).add(resolved);
    }
    List<Resolved> chosen = new ArrayList<>();
    SortedMap<AnalyteCode, Resolved> asFed = new TreeMap<>();
    for (AnalyteCode code : order) {
      choose(code, groups.getOrDefault(code, List.of()), chosen, asFed);
    }
    return new Settled(List.copyOf(chosen), asFed);
  }

  private static void choose(
      AnalyteCode code,
      List<Resolved> group,
      List<Resolved> chosen,
      SortedMap<AnalyteCode, Resolved> asFed) {
    if (isWater(code)) {
      water(group).ifPresent(chosen::add);
      return;
    }
    List<Resolved> dry = group.stream().filter(r -> !r.basis().equals("af")).toList();
    List<Resolved> wet = group.stream().filter(r -> r.basis().equals("af")).toList();
    if (dry.isEmpty()) {
      chosen.add(best(wet));
      return;
    }
    chosen.add(best(dry));
    if (!wet.isEmpty()) {
      asFed.put(code, best(wet));
    }
  }

  static boolean isWater(AnalyteCode code) {
    return code.equals(AnalyteCode.DM) || code.equals(AnalyteCode.MOISTURE);
  }

  /**
   * Dry matter and moisture are shares of the feed as it is: the figure under 'as fed' counts, a
   * figure of 100 or 0 under 'dry matter' says nothing.
   */
  private static Optional<Resolved> water(List<Resolved> group) {
    List<Resolved> telling = group.stream().filter(r -> !isTrivial(r)).toList();
    List<Resolved> underAsFed =
        telling.stream().filter(r -> says(r, "af") || !says(r, "dm")).toList();
    if (!underAsFed.isEmpty()) {
      return Optional.of(best(underAsFed));
    }
    return telling.isEmpty() ? Optional.empty() : Optional.of(best(telling));
  }

  private static boolean says(Resolved resolved, String basis) {
    return resolved.finding().bases().stream()
        .filter(s -> s.from() <= 1)
        .anyMatch(s -> s.what().equals(basis));
  }

  private static boolean isTrivial(Resolved resolved) {
    boolean trivial = resolved.value().filter(v -> v.best() == 100 || v.best() == 0).isPresent();
    return trivial
        && (says(resolved, "dm")
            || resolved.finding().bases().stream().anyMatch(s -> s.what().equals("dm")));
  }

  /** The most exact of several figures that agree; if they do not, the first one with a doubt. */
  private static Resolved best(List<Resolved> same) {
    Resolved first = same.get(0);
    if (same.size() == 1) {
      return first;
    }
    for (Resolved other : same) {
      if (other.value().isEmpty() || !agree(first, other)) {
        boolean sameTrouble = same.stream().allMatch(r -> r.trouble().equals(first.trouble()));
        return sameTrouble && !first.trouble().isEmpty()
            ? first
            : first.withTrouble("printed-twice").amongOthers(same);
      }
      if (!other.trouble().isEmpty()) {
        return first.withTrouble(other.trouble());
      }
    }
    return same.stream().reduce(first, (a, b) -> width(b) < width(a) ? b : a);
  }

  private static boolean agree(Resolved a, Resolved b) {
    if (a.value().isEmpty() || b.value().isEmpty() || !a.basis().equals(b.basis())) {
      return false;
    }
    Measured x = a.value().get();
    Measured y = b.value().get();
    double slack = 1e-9 * Math.max(x.best(), y.best());
    return x.low() <= y.high() + slack && y.low() <= x.high() + slack;
  }

  private static double width(Resolved resolved) {
    return resolved.value().map(v -> v.high() - v.low()).orElse(Double.POSITIVE_INFINITY);
  }

  /** The share of dry matter by which a figure on this basis is smaller than one on dry matter. */
  double share(Measured value) {
    if (value.basis() != Basis.AS_FED) {
      return 1;
    }
    return chosen.stream()
        .filter(r -> r.code().equals(AnalyteCode.DM))
        .flatMap(r -> r.value().stream())
        .findFirst()
        .map(v -> v.best() / 100)
        .orElse(0.5);
  }
}
