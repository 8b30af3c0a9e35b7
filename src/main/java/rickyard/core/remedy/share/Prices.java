package rickyard.core.remedy.share;

import java.util.List;

/**
 * Prices as whole numbers, so fine as the optimiser can take them, with room below for a change of
 * hay that counts less than the least difference of price.
 *
 * <p>One unit moved around a simple cycle of the network passes each pile once at most, and at each
 * the number of changes differs by one at most: with a factor above the number of piles no saving
 * of changes outweighs a saving of price.
 */
final class Prices {
  private static final double FINEST = 100;

  private final double perMoney;
  private final double dearest;
  private final long factor;

  Prices(List<Pile> piles) {
    dearest =
        piles.stream()
            .filter(p -> p.pricePerTonneDm().isPresent())
            .mapToDouble(p -> p.pricePerTonneDm().getAsDouble())
            .max()
            .orElse(0);
    factor = piles.size() + 1L;
    double room = (MinCostFlow.MOST_COST / factor - 3) / 2.0;
    perMoney = Math.min(FINEST, dearest == 0 ? FINEST : room / dearest);
  }

  /** A pile's price in whole units; one without a price counts as the dearest. */
  long of(Pile pile) {
    return Math.round(pile.pricePerTonneDm().orElse(dearest) * perMoney);
  }

  /**
   * The cost of a unit of hay from a pile.
   *
   * @param limited a horse that needs cleared hay pays the price; any other pays nothing where it
   *     stays and more than the dearest hay costs where it must move
   * @param stays whether it is fed this lot now
   */
  long cost(Pile pile, boolean limited, boolean stays) {
    if (limited) {
      return of(pile) * factor + (stays ? 0 : 1);
    }
    long moved = Math.round(dearest * perMoney) + 1;
    return stays ? 0 : (moved + of(pile)) * factor;
  }
}
