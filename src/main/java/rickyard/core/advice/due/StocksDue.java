package rickyard.core.advice.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;

/**
 * Hay that runs out, counted back by the days of a changeover: the last day on which a change to
 * other hay can still be begun in steps.
 *
 * <p>A client's hay is what it holds of the lot and what was delivered to it, less what its horses
 * ate since that was opened. Where a register says no amount, nothing is counted.
 */
final class StocksDue {
  private final FollowUpContext context;

  private StocksDue(FollowUpContext context) {
    this.context = context;
  }

  static List<FollowUp> of(FollowUpContext context, Fed fed) {
    StocksDue due = new StocksDue(context);
    List<FollowUp> found = new ArrayList<>();
    for (Lot lot : context.lots().values()) {
      SortedMap<String, List<Fed.Meal>> clients = new TreeMap<>();
      fed.of(lot.id())
          .forEach(m -> clients.computeIfAbsent(m.client(), c -> new ArrayList<>()).add(m));
      clients.forEach((client, meals) -> due.stock(lot, client, meals).ifPresent(found::add));
    }
    return found;
  }

  private Optional<FollowUp> stock(Lot lot, String client, List<Fed.Meal> meals) {
    return HayLeft.of(context, lot, client, Fed.kgPerDay(meals))
        .map(left -> due(lot, client, meals, left))
        .filter(f -> context.isNear(f.due()));
  }

  private FollowUp due(Lot lot, String client, List<Fed.Meal> meals, HayLeft left) {
    int days =
        meals.stream()
            .map(m -> context.findHorse(m.horse()))
            .flatMap(Optional::stream)
            .mapToInt(h -> context.remedy().changeoverDaysFor(h.conditions()))
            .max()
            .orElse(0);
    LocalDate begin = left.lastDay().minusDays(days);
    return FollowUp.of(
        begin,
        FollowUpKind.STOCK,
        lot.id(),
        client + ": get more of it, or begin the change to other hay",
        Math.round(left.kg())
            + " kg left for "
            + Fed.names(meals)
            + ", enough until "
            + left.lastDay()
            + "; a changeover takes "
            + days
            + " days"
            + tooLate(left.lastDay(), days)
            + next(lot, client)
            + more(lot, client));
  }

  private String tooLate(LocalDate last, int days) {
    long there = ChronoUnit.DAYS.between(context.asOf(), last);
    return there >= days ? "" : "; only " + Math.max(0, there) + " are left for it";
  }

  /** Hay that is there already to take the lot's place. */
  private String next(Lot lot, String client) {
    return context.deliveries().stream()
        .filter(d -> d.clientId().equals(client) && d.finishedOn().isEmpty())
        .filter(d -> d.replaces().filter(lot.id()::equals).isPresent())
        .map(Delivery::lotId)
        .sorted()
        .findFirst()
        .map(next -> "; " + next + " is there to take its place")
        .orElse("");
  }

  /** Only what can be bought: the stock of a lot that is for sale is there for everybody. */
  private static String more(Lot lot, String client) {
    OptionalDouble stock = lot.stockKg();
    return lot.forSale() && !lot.holder().equals(client) && stock.isPresent()
        ? "; " + Math.round(stock.getAsDouble()) + " kg of it are for sale"
        : "";
  }
}
