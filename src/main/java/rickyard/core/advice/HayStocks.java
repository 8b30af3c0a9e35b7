package rickyard.core.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.Stock;

/** How much hay of a lot a horse can count on, and what the other horses take of it. */
final class HayStocks {
  private final DeliveredHay delivered;
  private final HayUse use;

  HayStocks(List<Delivery> deliveries, HayUse use, LocalDate asOf) {
    this.delivered = new DeliveredHay(deliveries, use.eaten(), asOf);
    this.use = use;
  }

  /** Whether a client was delivered the lot and has not used it up. */
  boolean isDelivered(String lot, String client) {
    return delivered.isThere(lot, client);
  }

  /**
   * What can be had for a horse: what is for sale or the client's own, and what was delivered to it
   * and is not eaten. What is for sale is shared with everybody who eats of the lot, the rest with
   * the other horses of the client; a horse that is to leave the lot counts until it does, for it
   * may be told to stay.
   */
  Stock inReach(Lot lot, Horse horse) {
    String client = horse.clientId();
    boolean isOpen = lot.forSale() || lot.holder().equals(client);
    double others =
        lot.forSale()
            ? use.either().ofOthers(lot.id(), horse.id())
            : use.either().ofOthersAt(client, lot.id(), horse.id());
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

  /** Empty where nothing was ever delivered or nobody knows how much is left. */
  private OptionalDouble delivered(String lot, String client) {
    return delivered.wasThere(lot, client) ? delivered.left(lot, client) : OptionalDouble.empty();
  }
}
