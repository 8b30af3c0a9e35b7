package rickyard.core.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.Level;
import rickyard.core.nutrition.WeightBy;
import rickyard.core.remedy.Stock;

/** What a horse can count on of a lot: not what it eats itself counts off, but what others eat. */
class HayStocksTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  private static Horse horse(String id, String client) {
    return new Horse(
        id,
        client,
        id,
        HorseType.HORSE,
        Optional.of(YearMonth.of(2012, 4)),
        500,
        WeightBy.SCALE,
        Optional.<LocalDate>empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(500),
        HorseStatus.MAINTENANCE,
        Level.AVERAGE,
        OptionalInt.empty(),
        OptionalDouble.of(5),
        new TreeSet<>(),
        OptionalInt.of(2),
        false,
        OptionalDouble.of(0),
        false,
        Extras.NONE,
        "",
        Optional.<LocalDate>empty(),
        Optional.<LocalDate>empty());
  }

  private static HayUse.Taken taken(String horse, String client, double kg) {
    return new HayUse.Taken(horse, client, "L", kg);
  }

  private static HayStocks stocks(HayUse use, Delivery... deliveries) {
    return new HayStocks(List.of(deliveries), use, DAY);
  }

  private static HayUse use(HayUse.Taken... taken) {
    List<HayEaten.Span> always =
        Stream.of(taken)
            .map(t -> new HayEaten.Span(t.client(), t.lot(), LocalDate.MIN, DAY, t.kg()))
            .toList();
    return HayUse.of(List.of(taken), List.of(taken), HayEaten.of(always));
  }

  private static Delivery delivery(double kg, String opened, String finished) {
    return new Delivery(
        "L",
        "ash",
        OptionalDouble.of(kg),
        LocalDate.of(2026, 2, 1),
        Optional.empty(),
        Optional.empty(),
        opened.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(opened)),
        finished.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(finished)));
  }

  private static final HayUse THREE =
      use(taken("own", "ash", 8), taken("mate", "ash", 6), taken("stranger", "elm", 10));

  @Test
  void whatIsForSaleIsSharedWithEverybodyButTheHorseItself() {
    Stock stock = stocks(THREE).inReach(lot("co-op", 900, true), horse("own", "ash"));

    assertEquals(900, stock.stockKg().orElseThrow(), 0);
    assertEquals(16, stock.othersKgPerDay(), 1e-12);
    // 900 kg for 30 days are 30 kg a day, 16 of which others eat
    assertEquals(14, stock.mostKgPerDay(30), 1e-12);
  }

  @Test
  void aClientsOwnHayIsSharedWithItsOtherHorsesOnly() {
    Stock stock = stocks(THREE).inReach(lot("ash", 900, false), horse("own", "ash"));

    assertEquals(6, stock.othersKgPerDay(), 1e-12);
  }

  /** Opened 15 days ago, 14 kg a day: 210 of 400 kg are eaten. */
  @Test
  void whatIsEatenOfADeliveryIsOff() {
    HayStocks stocks = stocks(THREE, delivery(400, "2026-03-01", ""));

    assertTrue(stocks.isDelivered("L", "ash"));
    Stock stock = stocks.atHand(lot("co-op", 9000, false), horse("own", "ash"));
    assertEquals(190, stock.stockKg().orElseThrow(), 1e-9);
    assertEquals(6, stock.othersKgPerDay(), 1e-12);
    assertEquals(190.0 / 14, stock.daysAt(8).orElseThrow(), 1e-9);
  }

  /** A horse that went over to other hay on 6 March ate 8 kg a day for five days before. */
  @Test
  void whatWasEatenByAHorseThatEatsItNoMoreIsOffToo() {
    HayEaten eaten =
        HayEaten.of(
            List.of(
                new HayEaten.Span("ash", "L", LocalDate.MIN, LocalDate.of(2026, 3, 6), 8),
                new HayEaten.Span("ash", "L", LocalDate.of(2026, 2, 1), DAY, 6),
                new HayEaten.Span("elm", "L", LocalDate.of(2026, 2, 1), DAY, 10)));
    HayUse use = HayUse.of(List.of(), List.of(taken("mate", "ash", 6)), eaten);

    HayStocks stocks = stocks(use, delivery(400, "2026-03-01", ""));

    Stock stock = stocks.atHand(lot("co-op", 9000, false), horse("own", "ash"));
    assertEquals(400 - 15 * 6 - 5 * 8, stock.stockKg().orElseThrow(), 1e-9);
  }

  @Test
  void aHorseThatIsToLeaveALotCountsOnItUntilItDoes() {
    HayUse use =
        HayUse.of(
            List.of(taken("mate", "ash", 3)),
            List.of(taken("mate", "ash", 6), taken("stranger", "elm", 10)),
            HayEaten.NONE);

    Stock stock = stocks(use).inReach(lot("co-op", 900, true), horse("own", "ash"));

    assertEquals(16, stock.othersKgPerDay(), 1e-12);
  }

  @Test
  void aDeliveryThatIsUsedUpLeavesNothingAtHand() {
    HayStocks stocks = stocks(THREE, delivery(400, "2026-02-10", "2026-03-10"));

    assertFalse(stocks.isDelivered("L", "ash"));
    Stock stock = stocks.atHand(lot("co-op", 9000, true), horse("own", "ash"));
    assertEquals(0, stock.stockKg().orElseThrow(), 0);
  }

  @Test
  void anOpenedDeliveryThatNobodyEatsIsNotKnown() {
    HayStocks stocks = stocks(use(), delivery(400, "2026-02-10", ""));

    assertTrue(stocks.atHand(lot("co-op", 9000, true), horse("own", "ash")).stockKg().isEmpty());
  }

  @Test
  void hayForSaleOfWhichNobodyKnowsTheStockIsNotBounded() {
    Lot unknown = lot("co-op", Double.NaN, true);
    Stock stock = stocks(THREE, delivery(400, "", "")).inReach(unknown, horse("own", "ash"));

    assertTrue(stock.stockKg().isEmpty());
  }

  private static Lot lot(String holder, double stockKg, boolean forSale) {
    return new Lot(
        "L",
        holder,
        "grass-hay",
        OptionalDouble.empty(),
        "1",
        Optional.empty(),
        Double.isNaN(stockKg) ? OptionalDouble.empty() : OptionalDouble.of(stockKg),
        OptionalDouble.of(18),
        OptionalDouble.empty(),
        forSale,
        OptionalInt.empty(),
        Optional.empty(),
        "",
        "");
  }
}
