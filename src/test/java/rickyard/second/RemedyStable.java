package rickyard.second;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** The foods, stocks, labels and rations of a remedy yard, from the register text alone. */
final class RemedyStable {
  private static final double POUND_KG = 0.45359237;

  private final Books books;
  private final Map<String, Map<String, String>> lots = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> labels = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> horses = new LinkedHashMap<>();
  private final Map<String, Food> foods = new HashMap<>();
  private final List<Map<String, String>> rations;
  private final List<Map<String, String>> deliveries;
  private final Map<String, Double> use = new TreeMap<>();
  private final Map<String, SortedMap<String, LotRuling>> lotRulings = new HashMap<>();

  RemedyStable(Books books, RemedyYard yard) {
    this.books = books;
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
    horses
        .values()
        .forEach(
            h -> portions(h).forEach(p -> use.merge(p.food().key(), p.kg(), Double::sum)));
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

  /** What all horses together are given of it today. */
  double useKg(String key) {
    return use.getOrDefault(key, 0.0);
  }

  /** What a client can have of a lot: what is for sale or its own, and what it was delivered. */
  OptionalDouble stockKg(String key, String client) {
    Map<String, String> lot = lots.getOrDefault(key, Map.of());
    String cell = lot.getOrDefault("stock_kg", "");
    boolean isOpen =
        lot.getOrDefault("for_sale", "").equals("yes")
            || lot.getOrDefault("holder", "").equals(client);
    double delivered =
        deliveries.stream()
            .filter(d -> d.get("lot_id").equals(key) && d.get("client_id").equals(client))
            .mapToDouble(d -> Double.parseDouble(d.get("kg")))
            .sum();
    return cell.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of((isOpen ? Double.parseDouble(cell) : 0) + delivered);
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
