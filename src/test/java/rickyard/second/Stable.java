package rickyard.second;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** The foods of a random yard and the rations of its horses, from the register text alone. */
final class Stable {
  private static final double POUND_KG = 0.45359237;

  private final Map<String, Food> foods = new HashMap<>();
  private final List<Map<String, String>> rations;
  private final List<Map<String, String>> measures;

  Stable(Books books, RandomYard yard) {
    Pantry pantry = new Pantry(books);
    Csv.parse(yard.feeds.toString()).forEach(r -> foods.put(r.get("feed_id"), pantry.feed(r)));
    for (Map<String, String> lot : Csv.parse(yard.lots.toString())) {
      RandomSheet sheet = yard.sheets.get(lot.get("lot_id"));
      foods.put(
          lot.get("lot_id"),
          pantry.lot(lot, sheet == null ? new TreeMap<>() : laboratory(books, lot, sheet)));
    }
    this.rations = Csv.parse(yard.rations.toString());
    this.measures = Csv.parse(yard.measures.toString());
  }

  static SortedMap<String, Num> laboratory(
      Books books, Map<String, String> lot, RandomSheet sheet) {
    String cores = lot.get("cores");
    int registered = cores.isEmpty() ? 0 : Integer.parseInt(cores);
    int counts = sheet.cores() > 0 ? sheet.cores() : registered;
    return new TreeMap<>(
        new Laboratory(books, materialClass(lot.get("material")), counts)
            .contents(sheet.figures()));
  }

  /** The class of the uncertainties; a mixed hay of unknown share counts as legume. */
  private static String materialClass(String material) {
    return switch (material) {
      case "legume-hay", "mixed-hay" -> "legume";
      case "cereal-hay" -> "cereal";
      case "haylage" -> "haylage";
      case "straw" -> "straw";
      default -> "grass";
    };
  }

  List<Portioned> portions(Map<String, String> horse) {
    List<Portioned> portions = new ArrayList<>();
    for (Map<String, String> row : rations) {
      if (row.get("horse_id").equals(horse.get("horse_id"))) {
        String meals = row.get("meals");
        portions.add(
            new Portioned(
                foods.get(row.get("item")),
                kg(row, horse),
                0,
                row.get("fed").equals("bucket"),
                meals.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(meals))));
      }
    }
    return portions;
  }

  private double kg(Map<String, String> row, Map<String, String> horse) {
    double amount = Double.parseDouble(row.get("amount"));
    return switch (row.get("unit")) {
      case "kg" -> amount;
      case "lb" -> amount * POUND_KG;
      case "pct_bw" -> amount * Double.parseDouble(horse.get("body_weight_kg")) / 100;
      default ->
          amount
              * measures.stream()
                  .filter(m -> m.get("item").equals(row.get("item")))
                  .filter(m -> m.get("client_id").equals(horse.get("client_id")))
                  .mapToDouble(m -> Double.parseDouble(m.get("kg")))
                  .findFirst()
                  .orElseThrow();
    };
  }
}
