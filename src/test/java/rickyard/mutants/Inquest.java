package rickyard.mutants;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;
import rickyard.mutants.Court.Ruling;
import rickyard.mutants.Court.Trial;

/**
 * What an altered report did to its lots, compared with the report as it was.
 *
 * @param falseClears limit by lot that clears and should not
 * @param wrong analytes by lot whose figure in force is not the true one
 * @param less whether something that was in force is not, or something more is asked
 * @param isOtherLot whether every such lot is one that the report did not name before
 * @param isRounding whether every such verdict rests on a figure that is right
 */
record Inquest(
    SortedMap<String, SortedSet<String>> falseClears,
    SortedMap<String, SortedSet<String>> wrong,
    boolean less,
    boolean isOtherLot,
    boolean isRounding) {
  private static final double ROUNDING = 1e-6;
  private static final SortedSet<String> NONE = new TreeSet<>();

  static Inquest of(Trial before, Trial after, Court court) {
    SortedMap<String, SortedSet<String>> clears = new TreeMap<>();
    SortedMap<String, SortedSet<String>> wrong = new TreeMap<>();
    boolean less = after.questions() > before.questions();
    for (Map.Entry<String, Ruling> entry : after.rulings().entrySet()) {
      Optional<Ruling> truth = truth(entry.getKey(), entry.getValue(), before, court);
      SortedSet<String> more = new TreeSet<>(entry.getValue().clears());
      truth.ifPresent(t -> more.removeAll(t.clears()));
      // A lot that no register knows is asked about and reaches no horse meanwhile.
      boolean provisional =
          !court.knows(entry.getKey()) && !before.rulings().containsKey(entry.getKey());
      if (!more.isEmpty() && !provisional) {
        clears.put(entry.getKey(), more);
      }
      SortedSet<String> false_ = wrong(truth, entry.getValue());
      if (!false_.isEmpty()) {
        wrong.put(entry.getKey(), false_);
      }
    }
    for (Map.Entry<String, Ruling> entry : before.rulings().entrySet()) {
      Ruling now = after.rulings().get(entry.getKey());
      less |= now == null || size(now) < size(entry.getValue());
    }
    boolean isOther =
        !clears.isEmpty()
            && clears.keySet().stream()
                .allMatch(l -> court.knows(l) && !before.rulings().containsKey(l));
    boolean isRounding =
        !clears.isEmpty()
            && clears.entrySet().stream()
                .allMatch(e -> court.isRight(e.getValue(), wrong.getOrDefault(e.getKey(), NONE)));
    return new Inquest(clears, wrong, less, isOther, isRounding);
  }

  /** A lot that no register knows is the sample itself under another name. */
  private static Optional<Ruling> truth(String lot, Ruling ruling, Trial before, Court court) {
    Ruling same = before.rulings().get(lot);
    if (same != null || court.knows(lot)) {
      return Optional.ofNullable(same);
    }
    return before.rulings().values().stream()
        .filter(r -> r.sample() == ruling.sample())
        .findFirst();
  }

  private static int size(Ruling ruling) {
    return ruling.analysis().map(a -> values(a).size()).orElse(0);
  }

  private static SortedMap<String, Measured> values(AccountedAnalysis analysis) {
    SortedMap<String, Measured> values = new TreeMap<>();
    analysis
        .analysis()
        .contents()
        .forEach(
            (code, value) -> {
              if (value.isBoundedAbove()) {
                values.put(code.value(), value);
              }
            });
    analysis.analysis().dryMatter().ifPresent(v -> values.put(AnalyteCode.DM.value(), v));
    return values;
  }

  private static SortedSet<String> wrong(Optional<Ruling> truth, Ruling ruling) {
    SortedSet<String> wrong = new TreeSet<>();
    SortedMap<String, Measured> right =
        truth.flatMap(Ruling::analysis).map(Inquest::values).orElseGet(TreeMap::new);
    ruling
        .analysis()
        .map(Inquest::values)
        .orElseGet(TreeMap::new)
        .forEach(
            (code, value) -> {
              Measured expected = right.get(code);
              if (expected == null || !meets(value, expected)) {
                wrong.add(code);
              }
            });
    return wrong;
  }

  private static boolean meets(Measured a, Measured b) {
    double slack = ROUNDING * Math.max(1, b.high());
    return a.low() <= b.high() + slack && b.low() <= a.high() + slack;
  }

  Fate fate() {
    if (!falseClears.isEmpty()) {
      return Fate.FALSE_CLEAR;
    }
    if (!wrong.isEmpty()) {
      return Fate.WRONG_NOT_CLEARING;
    }
    return less ? Fate.CAUGHT : Fate.HARMLESS;
  }
}
