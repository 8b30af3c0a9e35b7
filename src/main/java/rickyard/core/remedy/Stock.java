package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Feed;

/**
 * How much of an item there is, how it is sold and what others take of it.
 *
 * @param stockKg kg as fed that can be had; empty if unlimited or unknown
 * @param othersKgPerDay kg as fed that all other horses take of it per day, at least 0
 * @param unitKg kg as fed of one bag or bale
 * @param pricePerKg price of a kilogram as fed
 */
public record Stock(
    OptionalDouble stockKg,
    double othersKgPerDay,
    OptionalDouble unitKg,
    OptionalDouble pricePerKg) {

  /** Nothing known: no bound on what can be had, no price. */
  public static final Stock UNKNOWN =
      new Stock(OptionalDouble.empty(), 0, OptionalDouble.empty(), OptionalDouble.empty());

  private static final double KG_PER_TONNE = 1000;

  public Stock {
    requireNonNull(stockKg, "stockKg");
    requireNonNull(unitKg, "unitKg");
    requireNonNull(pricePerKg, "pricePerKg");
    if (!(othersKgPerDay >= 0 && Double.isFinite(othersKgPerDay))) {
      throw new IllegalArgumentException("use by others must be >= 0, was " + othersKgPerDay);
    }
  }

  /** Hay of a lot: its stock, bales and price. */
  public static Stock of(Lot lot, double othersKgPerDay) {
    OptionalDouble price = lot.pricePerTonne();
    return new Stock(
        lot.stockKg(),
        othersKgPerDay,
        lot.baleKg(),
        price.isPresent()
            ? OptionalDouble.of(price.getAsDouble() / KG_PER_TONNE)
            : OptionalDouble.empty());
  }

  /** A feed that can be bought as it is needed: bags and price. */
  public static Stock of(Feed feed) {
    boolean isPriced = feed.bagKg().isPresent() && feed.pricePerBag().isPresent();
    return new Stock(
        OptionalDouble.empty(),
        0,
        feed.bagKg(),
        isPriced
            ? OptionalDouble.of(feed.pricePerBag().getAsDouble() / feed.bagKg().getAsDouble())
            : OptionalDouble.empty());
  }

  /**
   * The most that one horse may take per day so that the stock lasts.
   *
   * @param horizonDays days it must last
   * @return kg as fed per day, at least 0; infinite where the stock is not known
   */
  public double mostKgPerDay(double horizonDays) {
    return stockKg.isEmpty()
        ? Double.POSITIVE_INFINITY
        : Math.max(0, stockKg.getAsDouble() / horizonDays - othersKgPerDay);
  }

  /** Days that the stock lasts when one horse takes {@code kgPerDay} of it beside the others. */
  public OptionalDouble daysAt(double kgPerDay) {
    double use = kgPerDay + othersKgPerDay;
    return stockKg.isEmpty() || use <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(stockKg.getAsDouble() / use);
  }
}
