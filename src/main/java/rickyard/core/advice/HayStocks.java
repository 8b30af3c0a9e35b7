package rickyard.core.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.Stock;

/** How much hay of a lot a horse can count on, and what the other horses take of it. */
final class HayStocks {
  private final Map<Place, List<Delivery>> deliveries;
  private final HayUse use;
  private final LocalDate asOf;

  /** A lot at a client's. */
  private record Place(String lot, String client) {}

  HayStocks(List<Delivery> deliveries, HayUse use, LocalDate asOf) {
    this.deliveries =
        deliveries.stream()
            .filter(d -> !d.deliveredOn().isAfter(asOf))
            .collect(Collectors.groupingBy(d -> new Place(d.lotId(), d.clientId())));
    this.use = use;
    this.asOf = asOf;
  }

  /** Whether a client was delivered the lot and has not used it up. */
  boolean isDelivered(String lot, String client) {
    return had(lot, client).stream().anyMatch(d -> !isUsedUp(d));
  }

  /**
   * What can be had for a horse: what is for sale or the client's own, and what was delivered to it
   * and is not eaten. What is for sale is shared with everybody who eats of the lot, the rest with
   * the other horses of the client.
   */
  Stock inReach(Lot lot, Horse horse) {
    String client = horse.clientId();
    boolean isOpen = lot.forSale() || lot.holder().equals(client);
    double others =
        lot.forSale()
            ? use.coming().ofOthers(lot.id(), horse.id())
            : use.coming().ofOthersAt(client, lot.id(), horse.id());
    OptionalDouble delivered = delivered(lot.id(), client);
    OptionalDouble kg = isOpen ? sum(lot.stockKg(), delivered) : delivered;
    return stock(lot, kg, others);
  }

  /**
   * What is at the client's yard, for a horse that goes on with the hay it is fed today. All horses
   * that are fed of it today are taken to go on too.
   */
  Stock atHand(Lot lot, Horse horse) {
    String client = horse.clientId();
    double others = use.today().ofOthersAt(client, lot.id(), horse.id());
    OptionalDouble delivered = delivered(lot.id(), client);
    OptionalDouble kg = lot.holder().equals(client) ? sum(lot.stockKg(), delivered) : delivered;
    return stock(lot, kg, others);
  }

  private static Stock stock(Lot lot, OptionalDouble kg, double others) {
    Stock sold = Stock.of(lot, others);
    return new Stock(kg, others, sold.unitKg(), sold.pricePerKg());
  }

  /** Nothing delivered adds nothing; a part that nobody knows makes the sum unknown. */
  private static OptionalDouble sum(OptionalDouble stock, OptionalDouble delivered) {
    return stock.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(stock.getAsDouble() + delivered.orElse(0));
  }

  /**
   * What is left of all deliveries of a lot to a client: what its horses are fed of it today, for
   * each day since the first that is open was opened, is off.
   *
   * @return empty where nothing was ever delivered or nobody knows how much
   */
  private OptionalDouble delivered(String lot, String client) {
    List<Delivery> had = had(lot, client);
    List<Delivery> left = had.stream().filter(d -> !isUsedUp(d)).toList();
    if (had.isEmpty() || left.stream().anyMatch(d -> d.kg().isEmpty())) {
      return OptionalDouble.empty();
    }
    double perDay = use.today().ofClient(lot, client);
    Optional<LocalDate> opened =
        left.stream().flatMap(d -> opened(d).stream()).min(LocalDate::compareTo);
    double closed = kg(left.stream().filter(d -> opened(d).isEmpty()).toList());
    if (opened.isPresent() && perDay <= 0) {
      return closed > 0 ? OptionalDouble.of(closed) : OptionalDouble.empty();
    }
    double eaten = perDay * opened.map(day -> ChronoUnit.DAYS.between(day, asOf)).orElse(0L);
    double open = kg(left.stream().filter(d -> opened(d).isPresent()).toList());
    return OptionalDouble.of(Math.max(0, open - eaten) + closed);
  }

  private static double kg(List<Delivery> deliveries) {
    return deliveries.stream().mapToDouble(d -> d.kg().orElse(0)).sum();
  }

  private Optional<LocalDate> opened(Delivery delivery) {
    return delivery.openedOn().or(delivery::opensOn).filter(day -> day.isBefore(asOf));
  }

  private List<Delivery> had(String lot, String client) {
    return deliveries.getOrDefault(new Place(lot, client), List.of());
  }

  private boolean isUsedUp(Delivery delivery) {
    return delivery.finishedOn().filter(day -> !day.isAfter(asOf)).isPresent();
  }
}
