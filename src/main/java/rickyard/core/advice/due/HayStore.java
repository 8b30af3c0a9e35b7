package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.DeliveredHay;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Lot;

/**
 * A lot that a client's horses eat and of which the registers say how much is left.
 *
 * @param client whose horses
 * @param lot its id
 * @param horses that eat it, sorted
 * @param left how much, and until when
 */
public record HayStore(String client, String lot, List<String> horses, HayLeft left) {
  public HayStore {
    horses = List.copyOf(horses);
  }

  /**
   * The stores of the horses advised, by lot and client.
   *
   * @param advice on all horses of a client, or what they eat is counted short
   */
  public static List<HayStore> of(
      List<HorseAdvice> advice,
      SortedMap<String, Lot> lots,
      DeliveredHay delivered,
      LocalDate asOf) {
    Fed fed = Fed.ofStay(advice);
    List<HayStore> stores = new ArrayList<>();
    for (Lot lot : lots.values()) {
      SortedMap<String, List<Fed.Meal>> clients = new TreeMap<>();
      fed.of(lot.id())
          .forEach(m -> clients.computeIfAbsent(m.client(), c -> new ArrayList<>()).add(m));
      clients.forEach(
          (client, meals) ->
              HayLeft.of(delivered, lot, client, Fed.kgPerDay(meals), asOf)
                  .map(left -> new HayStore(client, lot.id(), horses(meals), left))
                  .ifPresent(stores::add));
    }
    return stores;
  }

  private static List<String> horses(List<Fed.Meal> meals) {
    return meals.stream().map(Fed.Meal::horse).distinct().toList();
  }
}
