package rickyard.core.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.Lot;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.Origin;
import rickyard.core.quantity.Measured;
import rickyard.core.remedy.Candidate;
import rickyard.core.remedy.CandidateKind;
import rickyard.core.remedy.Content;
import rickyard.core.remedy.EnergyBand;
import rickyard.core.remedy.Label;
import rickyard.core.remedy.Stock;

/** What a client can get hold of for a horse, as the search for remedies sees it. */
final class Reach {
  private final Larder larder;
  private final HayStocks stocks;
  private final List<Limit> limits;
  private final LocalDate asOf;

  Reach(Larder larder, HayStocks stocks, List<Limit> limits, LocalDate asOf) {
    this.larder = larder;
    this.stocks = stocks;
    this.limits = List.copyOf(limits);
    this.asOf = asOf;
  }

  /** A foodstuff and the candidate made of it. */
  record Item(Foodstuff food, Candidate candidate) {}

  /** The same key for a candidate as for its foodstuff. */
  static String key(Candidate candidate) {
    return candidate.batch().isEmpty() ? candidate.id() : candidate.id() + " " + candidate.batch();
  }

  /** Lots and feeds that a horse can have, by key; feeds past their shelf life are left out. */
  SortedMap<String, Item> of(Horse horse) {
    SortedMap<String, Item> found = new TreeMap<>();
    for (Lot lot : larder.lots().values()) {
      if (isInReach(lot, horse.clientId())) {
        larder
            .find(lot.id(), "")
            .map(food -> item(food, stocks.inReach(lot, horse), Label.NONE))
            .ifPresent(item -> found.put(item.food().key(), item));
      }
    }
    for (Feed feed : larder.feeds()) {
      if (keeps(feed)) {
        larder
            .find(feed.id(), feed.batch())
            .map(food -> item(food, Stock.of(feed), Label.of(feed)))
            .ifPresent(item -> found.put(item.food().key(), item));
      }
    }
    return found;
  }

  /** The candidate of a foodstuff that is fed already, in reach or not. */
  Item fed(Foodstuff food, Horse horse) {
    return item(food, larder.findLot(food.id()).map(l -> stocks.inReach(l, horse)));
  }

  /** The candidate of a foodstuff that is fed today, with what of it is at the yard. */
  Item atHand(Foodstuff food, Horse horse) {
    return item(food, larder.findLot(food.id()).map(l -> stocks.atHand(l, horse)));
  }

  private Item item(Foodstuff food, Optional<Stock> hay) {
    Optional<Feed> feed = larder.findFeed(food.id(), food.batch());
    return item(
        food,
        hay.or(() -> feed.map(Stock::of)).orElse(Stock.UNKNOWN),
        feed.map(Label::of).orElse(Label.NONE));
  }

  private boolean isInReach(Lot lot, String clientId) {
    return lot.forSale() || lot.holder().equals(clientId) || stocks.isDelivered(lot.id(), clientId);
  }

  private boolean keeps(Feed feed) {
    return feed.baggedOn().isEmpty()
        || feed.shelfLifeMonths().isEmpty()
        || feed.baggedOn().get().plusMonths(feed.shelfLifeMonths().getAsInt()).isAfter(asOf);
  }

  private Item item(Foodstuff food, Stock stock, Label label) {
    boolean isLot = larder.findLot(food.id()).isPresent();
    return new Item(
        food,
        new Candidate(
            food.id(),
            food.batch(),
            food.isStraw() ? food.name() + " (" + food.role() + ")" : food.name(),
            isLot ? CandidateKind.LOT : CandidateKind.FEED,
            food.role(),
            food.form(),
            food.isForage(),
            food.isStraw(),
            Math.min(1, food.dryMatter().best() / 100),
            contents(food),
            nutrients(food),
            stock,
            label));
  }

  /**
   * Contents in the unit of the limits that ask for them; open ones, and what is only typical of a
   * forage, are unknown.
   */
  private SortedMap<String, Content> contents(Foodstuff food) {
    SortedMap<String, Content> contents = SearchLimits.ceilingContents(food);
    food.find(Nutrient.DE.analyte())
        .filter(v -> Origin.of(v.evidence()) == Origin.REPORTED)
        .map(v -> new Content(v.best() * Nutrient.DE.perKg(), 0))
        .ifPresent(energy -> contents.put(EnergyBand.QUANTITY, energy));
    for (Limit limit : limits) {
      if (limit.subject() == LimitSubject.LOT) {
        continue;
      }
      boolean isOfDiet = limit.subject() == LimitSubject.DIET;
      food.find(limit.analyte())
          .filter(v -> !food.isForage() || Origin.of(v.evidence()) == Origin.REPORTED)
          .filter(Measured::isBoundedAbove)
          .map(v -> isOfDiet ? v.in(limit.unit().unit()) : v)
          .ifPresent(v -> contents.put(limit.quantity(), new Content(v.upper(), v.u())));
    }
    return contents;
  }

  private static SortedMap<String, Double> nutrients(Foodstuff food) {
    SortedMap<String, Double> found = new TreeMap<>();
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed() && nutrient != Nutrient.DM) {
        food.find(nutrient.analyte())
            .ifPresent(v -> found.put(nutrient.code(), v.best() * nutrient.perKg()));
      }
    }
    return found;
  }
}
