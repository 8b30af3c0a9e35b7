package rickyard.second;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The foods, stocks, labels and rations of a remedy yard, from the register text alone. */
final class RemedyStable {
  private static final double POUND_KG = 0.45359237;

  private final Map<String, Map<String, String>> lots = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> labels = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> horses = new LinkedHashMap<>();
  private final Map<String, Food> foods = new HashMap<>();
  private final List<Map<String, String>> rations;
  private final List<Map<String, String>> deliveries;
  private final Map<String, SortedMap<String, LotRuling>> lotRulings = new HashMap<>();

  RemedyStable(Books books, RemedyYard yard) {
    this.rations = Csv.parse(yard.rations.toString());
    this.deliveries = Csv.parse(yard.deliveries.toString());
    Pantry pantry = new Pantry(books);
    for (Map<String, String> row : Csv.parse(yard.feeds.text.toString())) {
      Food food = pantry.feed(row);
      foods.put(food.key(), food);
      labels.put(food.key(), row);
    }
    for (Map<String, String> row : Csv.parse(yard.lots.toString())) {
      String id = row.get("lot_id");
      lots.put(id, row);
      RandomSheet sheet = yard.sheets.get(id);
      SortedMap<String, Num> contents =
          sheet == null ? new TreeMap<>() : Stable.laboratory(books, row, sheet);
      boolean isDry = !row.get("material").equals("haylage");
      lotRulings.put(id, LotRuling.all(books, contents, isDry));
      foods.put(id, pantry.lot(row, contents));
    }
    Csv.parse(yard.horses.toString()).forEach(h -> horses.put(h.get("horse_id"), h));
  }

  Map<String, Map<String, String>> horses() {
    return horses;
  }

  Food food(String key) {
    return foods.get(key);
  }

  boolean isLot(String key) {
    return lots.containsKey(key);
  }

  /** The row of feeds.csv; empty for a lot. */
  Map<String, String> label(String key) {
    return labels.getOrDefault(key, Map.of());
  }

  SortedMap<String, LotRuling> lotRulings(String lot) {
    return lotRulings.get(lot);
  }

  /**
   * What a client can have of a lot: what is for sale or its own, and what it was delivered less
   * what its horses ate of it since it was opened.
   */
  OptionalDouble stockKg(String key, String client) {
    Map<String, String> lot = lots.getOrDefault(key, Map.of());
    String cell = lot.getOrDefault("stock_kg", "");
    boolean isOpen = isForSale(key) || lot.getOrDefault("holder", "").equals(client);
    double delivered = 0;
    for (Map<String, String> d : deliveries) {
      if (d.get("lot_id").equals(key) && d.get("client_id").equals(client)) {
        long days = ChronoUnit.DAYS.between(LocalDate.parse(d.get("opened_on")), RandomYard.DAY);
        double eaten = days * useKg(key, h -> h.get("client_id").equals(client));
        delivered += Math.max(0, Double.parseDouble(d.get("kg")) - eaten);
      }
    }
    return cell.isEmpty() || (!isOpen && delivered == 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of((isOpen ? Double.parseDouble(cell) : 0) + delivered);
  }

  private boolean isForSale(String key) {
    return lots.getOrDefault(key, Map.of()).getOrDefault("for_sale", "").equals("yes");
  }

  /** What the others take: all that eat of a lot for sale, else those of the same client. */
  double othersKg(String key, Map<String, String> horse) {
    return useKg(
        key,
        h ->
            !h.get("horse_id").equals(horse.get("horse_id"))
                && (isForSale(key) || h.get("client_id").equals(horse.get("client_id"))));
  }

  private double useKg(String key, Predicate<Map<String, String>> which) {
    return horses.values().stream()
        .filter(which)
        .flatMap(h -> portions(h).stream())
        .filter(p -> p.food().key().equals(key))
        .mapToDouble(Portioned::kg)
        .sum();
  }

  /** Feeds of the register; lots that the client holds or was delivered, or for sale there. */
  boolean isInReach(String key, String client) {
    Map<String, String> lot = lots.get(key);
    if (lot == null) {
      return labels.containsKey(key);
    }
    return lot.get("for_sale").equals("yes")
        || lot.get("holder").equals(client)
        || deliveries.stream()
            .anyMatch(d -> d.get("lot_id").equals(key) && d.get("client_id").equals(client));
  }

  /** Today's ration; every row of a random yard is in force. */
  List<Portioned> portions(Map<String, String> horse) {
    return rations.stream()
        .filter(r -> r.get("horse_id").equals(horse.get("horse_id")))
        .map(
            r -> {
              String meals = r.get("meals");
              String batch = r.get("batch");
              return new Portioned(
                  foods.get(r.get("item") + (batch.isEmpty() ? "" : " " + batch)),
                  kg(r, horse),
                  0,
                  r.get("fed").equals("bucket"),
                  meals.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(meals)));
            })
        .toList();
  }

  private static double kg(Map<String, String> row, Map<String, String> horse) {
    double amount = Double.parseDouble(row.get("amount"));
    return switch (row.get("unit")) {
      case "kg" -> amount;
      case "lb" -> amount * POUND_KG;
      default -> amount * Double.parseDouble(horse.get("body_weight_kg")) / 100;
    };
  }
}
