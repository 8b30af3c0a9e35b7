package rickyard.core.remedy;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What no register tells of a changed ration and a proposal therefore could not weigh. */
final class Unweighed {
  private Unweighed() {}

  /** A sentence with a space before it; empty where nothing is missing. */
  static String words(List<RemedyItem> items) {
    String missing =
        List.of(
                missing(items, "price", i -> i.costPerDay().isEmpty()),
                missing(items, "stock", Unweighed::isStockUnknown),
                missing(items, "label rate", Unweighed::isRateUnknown))
            .stream()
            .filter(w -> !w.isEmpty())
            .collect(Collectors.joining("; "));
    return missing.isEmpty() ? "" : " Not weighed: " + missing + ".";
  }

  private static String missing(List<RemedyItem> items, String what, Predicate<RemedyItem> lacks) {
    String names =
        items.stream()
            .filter(i -> i.thenKg() > 0)
            .filter(lacks)
            .map(i -> i.item().name())
            .distinct()
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? "" : "no " + what + " on record for " + names;
  }

  /** Feeds are bought as they are needed: only lots have a stock. */
  private static boolean isStockUnknown(RemedyItem item) {
    return item.item().kind() == CandidateKind.LOT && item.item().stock().stockKg().isEmpty();
  }

  private static boolean isRateUnknown(RemedyItem item) {
    Label label = item.item().label();
    boolean isRaised = item.thenKg() > item.nowKg() + 1e-9;
    boolean hasRate = item.fedAsForage() ? label.fullRateHigh().isPresent() : label.hasDose();
    return item.item().kind() == CandidateKind.FEED && isRaised && !hasRate;
  }
}
