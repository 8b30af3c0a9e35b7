package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.DeliveredHay;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.remedy.share.Pile;

/**
 * The hay that there is: what is for sale is for anybody; what a client holds or was delivered is
 * for its own horses only, and costs nothing any more.
 */
final class Store {
  private static final String CO_OP = "co-op";
  private static final double GRAMS_PER_KG = 1000;

  /** Grams that binary fractions may lose: a millionth, so that 264 kg are not 263.999. */
  private static final double DUST = 1e-6;

  private final CoOpContext context;
  private final Map<String, SortedMap<String, Double>> use;
  private final Map<Place, OptionalDouble> kg = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();

  /** A lot in one place; the client is empty where it is for anybody. */
  record Place(String lot, String client) {}

  Store(CoOpContext context, List<Eater> eaters) {
    this.context = context;
    this.use = Eaters.useByClient(eaters);
    context.larder().lots().values().stream().filter(l -> !isStraw(l.id())).forEach(this::addLot);
    DeliveredHay delivered =
        new DeliveredHay(context.deliveries(), context.eaten(), context.asOf());
    context.deliveries().stream()
        .filter(d -> context.larder().findLot(d.lotId()).isPresent() && !isStraw(d.lotId()))
        .map(d -> new Place(d.lotId(), d.clientId()))
        .filter(p -> delivered.isThere(p.lot(), p.client()))
        .distinct()
        .sorted(Comparator.comparing(Place::lot).thenComparing(Place::client))
        .forEach(p -> add(p, left(p, delivered)));
  }

  /** Whether a register has hay to share out at all. */
  static boolean isNeeded(SortedMap<String, Lot> lots) {
    return lots.values().stream().anyMatch(l -> l.forSale() || l.holder().equals(CO_OP));
  }

  private boolean isStraw(String lot) {
    return context.larder().find(lot, "").filter(f -> f.isStraw() || !f.isForage()).isPresent();
  }

  private void addLot(Lot lot) {
    if (lot.forSale()) {
      if (lot.stockKg().isPresent()) {
        add(new Place(lot.id(), ""), lot.stockKg());
      } else {
        notes.add("lot " + lot.id() + " is for sale but its stock is not known: not shared out");
      }
    } else if (!lot.holder().equals(CO_OP)) {
      add(new Place(lot.id(), lot.holder()), lot.stockKg());
    }
  }

  /** What is left of what was delivered; nothing where something is open and no ration ate it. */
  private OptionalDouble left(Place place, DeliveredHay delivered) {
    OptionalDouble left = delivered.left(place.lot(), place.client());
    if (!delivered.isOpenAndUneaten(place.lot(), place.client())) {
      return left;
    }
    notes.add(
        "no ration on record fed of lot "
            + place.lot()
            + " at "
            + place.client()
            + " since it was opened: what is left of it there is not known and not counted");
    return OptionalDouble.of(left.orElse(0));
  }

  private void add(Place place, OptionalDouble more) {
    OptionalDouble before = kg.getOrDefault(place, OptionalDouble.of(0));
    kg.put(
        place,
        before.isPresent() && more.isPresent()
            ? OptionalDouble.of(before.getAsDouble() + more.getAsDouble())
            : OptionalDouble.empty());
  }

  /** The piles, for the optimiser. */
  List<Pile> piles() {
    List<Pile> piles = new ArrayList<>();
    kg.forEach(
        (place, amount) -> {
          Optional<Foodstuff> food = context.larder().find(place.lot, "");
          if (food.isEmpty()) {
            notes.add("nobody knows the dry matter of lot " + place.lot + ": not shared out");
          } else {
            pile(place, amount, food.get()).ifPresent(piles::add);
          }
        });
    return piles;
  }

  private Optional<Pile> pile(Place place, OptionalDouble amount, Foodstuff food) {
    double fraction = food.dryMatter().best() / 100;
    double asFed = amount.orElseGet(() -> assumed(place));
    if (amount.isEmpty() && asFed > 0) {
      notes.add(
          "nobody knows how much of lot "
              + place.lot
              + " "
              + place.client
              + " has: what its horses eat of it is taken to last");
    }
    OptionalDouble price = place.client.isEmpty() ? price(place.lot) : OptionalDouble.of(0);
    return asFed <= 0
        ? Optional.empty()
        : Optional.of(
            new Pile(
                place.lot,
                place.client,
                (long) Math.floor(asFed * fraction * GRAMS_PER_KG + DUST),
                price.isPresent()
                    ? OptionalDouble.of(price.getAsDouble() / fraction)
                    : OptionalDouble.empty()));
  }

  private double assumed(Place place) {
    return use.getOrDefault(place.client, new TreeMap<>()).getOrDefault(place.lot, 0.0)
        * context.horizonDays();
  }

  private OptionalDouble price(String lot) {
    return context.larder().findLot(lot).map(Lot::pricePerTonne).orElse(OptionalDouble.empty());
  }

  /** Grams as fed of each pile; rounded down. */
  Map<Place, Long> grams() {
    Map<Place, Long> grams = new LinkedHashMap<>();
    kg.forEach(
        (place, amount) ->
            grams.put(
                place,
                (long) Math.floor(amount.orElseGet(() -> assumed(place)) * GRAMS_PER_KG + DUST)));
    return grams;
  }

  List<String> notes() {
    return List.copyOf(notes);
  }
}
