package rickyard.core.advice.due;

import java.util.List;
import java.util.Optional;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.nutrition.Delivery;

/**
 * Hay that runs out, counted back by the days of a changeover: the last day on which a change to
 * other hay can still be begun in steps.
 */
final class StocksDue {
  private final FollowUpContext context;

  private StocksDue(FollowUpContext context) {
    this.context = context;
  }

  static List<FollowUp> of(FollowUpContext context) {
    StocksDue due = new StocksDue(context);
    return HayStore.of(context.advice(), context.lots(), context.delivered(), context.asOf())
        .stream()
        .map(due::due)
        .filter(f -> context.isNear(f.due()))
        .toList();
  }

  private FollowUp due(HayStore store) {
    int days =
        store.horses().stream()
            .map(context::findHorse)
            .flatMap(Optional::stream)
            .mapToInt(h -> context.remedy().changeoverDaysFor(h.conditions()))
            .max()
            .orElse(0);
    HayLeft left = store.left();
    // The last day of the steps is the last day of the old hay.
    return FollowUp.of(
        left.lastDay().minusDays(Math.max(0, days - 1)),
        FollowUpKind.STOCK,
        store.lot(),
        store.client() + ": get more of it, or begin the change to other hay",
        amount(store)
            + " left for "
            + String.join(", ", store.horses())
            + ", enough until "
            + left.lastDay()
            + "; a changeover takes "
            + days
            + " days"
            + tooLate(left, days)
            + next(store)
            + more(store));
  }

  /** Without a veterinary plan nothing is written from which a ration could be worked out. */
  private String amount(HayStore store) {
    boolean isWithheld =
        context.advice().stream().anyMatch(a -> a.vetFirst() && store.horses().contains(a.horse()));
    return isWithheld ? "hay" : Math.round(store.left().kg()) + " kg";
  }

  private String tooLate(HayLeft left, int days) {
    long there = left.daysFrom(context.asOf());
    return there >= days ? "" : "; only " + there + " are left for it";
  }

  /** Hay that is there already to take the lot's place. */
  private String next(HayStore store) {
    return context.deliveries().stream()
        .filter(d -> d.clientId().equals(store.client()) && d.finishedOn().isEmpty())
        .filter(d -> d.replaces().filter(store.lot()::equals).isPresent())
        .map(Delivery::lotId)
        .sorted()
        .findFirst()
        .map(next -> next(next, store))
        .orElse("");
  }

  /** Hay that is not to be opened for a horse takes no place. */
  private String next(String next, HayStore store) {
    List<String> staying =
        context.advice().stream()
            .filter(a -> store.horses().contains(a.horse()) && a.held().isPresent())
            .map(HorseAdvice::horse)
            .toList();
    return staying.isEmpty()
        ? "; " + next + " is there to take its place"
        : "; " + next + ", there to take its place, is not for " + String.join(", ", staying);
  }

  /** Only what can be bought: the stock of a lot that is for sale is there for everybody. */
  private String more(HayStore store) {
    return Optional.ofNullable(context.lots().get(store.lot()))
        .filter(lot -> lot.forSale() && !lot.holder().equals(store.client()))
        .filter(lot -> lot.stockKg().isPresent())
        .map(lot -> "; " + Math.round(lot.stockKg().orElse(0)) + " kg of it are for sale")
        .orElse("");
  }
}
