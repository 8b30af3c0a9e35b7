package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * The contents of one analyte that may be held against a limit, item by item.
 *
 * <p>A typical value of a forage never counts, nor does a label's silence where the role has a high
 * value. Items without a bounded value that together make less than the configured share of the dry
 * matter take the high value of their role; above that share nothing is taken for them.
 *
 * @param byItem what counts, by key of the item; a value that is open above is kept as it is
 * @param missing keys of the items without a bounded value, sorted
 * @param stoodIn keys of the items that took the high value of their role, sorted
 */
record LimitContents(Map<String, Measured> byItem, List<String> missing, List<String> stoodIn) {

  static LimitContents of(AnalyteCode code, List<DietItem> items, FeedingStandards standards) {
    Map<String, Measured> found = new TreeMap<>();
    Map<String, DietItem> unsettled = new TreeMap<>();
    double silentShare = 0;
    for (DietItem item : items) {
      if (!item.portion().food().isForage() && isOfForageOnly(code, standards)) {
        continue;
      }
      Optional<Measured> value = admissible(item.portion().food(), code, standards);
      value.ifPresent(v -> found.put(item.portion().food().key(), v));
      boolean isSettled = value.map(Measured::isBoundedAbove).orElse(false);
      if (!isSettled && item.kgDm() > 0) {
        unsettled.put(item.portion().food().key(), item);
        silentShare += item.share();
      }
    }
    List<String> missing = new ArrayList<>();
    List<String> stoodIn = new ArrayList<>();
    boolean mayStandIn = 100 * silentShare < standards.settings().number("sugar_silent_pct_dm");
    unsettled.forEach(
        (key, item) -> {
          Optional<Measured> high =
              mayStandIn ? high(item.portion().food(), code, standards) : Optional.empty();
          high.ifPresent(v -> found.put(key, v));
          (high.isPresent() ? stoodIn : missing).add(key);
        });
    return new LimitContents(found, missing, stoodIn);
  }

  /** Whether a content comes with forage alone: nothing else adds to it. */
  private static boolean isOfForageOnly(AnalyteCode code, FeedingStandards standards) {
    return standards.settings().lists("forage_only_contents", code.value());
  }

  private static Optional<Measured> admissible(
      Foodstuff food, AnalyteCode code, FeedingStandards standards) {
    return food.find(code)
        .filter(v -> v.basis() == Basis.DRY_MATTER)
        .filter(v -> !food.isForage() || Origin.of(v.evidence()) == Origin.REPORTED)
        .filter(v -> !isUndeclared(v) || standards.findHighValue(food.role(), code).isEmpty());
  }

  /** None of it because the label is silent: enough for a supply, not for a limit. */
  private static boolean isUndeclared(Measured value) {
    return value.evidence() instanceof Evidence.Assumed && value.high() <= 0;
  }

  private static Optional<Measured> high(
      Foodstuff food, AnalyteCode code, FeedingStandards standards) {
    double known = admissible(food, code, standards).map(Measured::best).orElse(0.0);
    return standards
        .findHighValue(food.role(), code)
        .map(
            h ->
                Measured.atMost(
                    Unit.PERCENT,
                    Basis.DRY_MATTER,
                    Math.max(h.value(), known),
                    new Evidence.Assumed(h.source().table(), h.role() + " " + code)));
  }
}
