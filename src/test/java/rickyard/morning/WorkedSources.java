package rickyard.morning;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What the demo's registers and its morning's tables give for the worked examples. */
final class WorkedSources {
  private final Path registers;
  private final MorningEnd end;

  WorkedSources(Path registers, MorningEnd end) {
    this.registers = registers;
    this.end = end;
  }

  /** A figure of a lot or batch that is in force, on dry matter; dry matter itself as fed. */
  private Map<String, String> analysis(String subject, String batch, String analyte) {
    String basis = analyte.equals("DM") ? "af" : "dm";
    List<Map<String, String>> rows =
        SmallOffice.rows(end, "analyses.csv").stream()
            .filter(r -> r.get("lot").equals(subject) && r.get("batch").equals(batch))
            .filter(r -> r.get("analyte").equals(analyte) && r.get("basis").equals(basis))
            .filter(r -> r.get("state").equals("in-force"))
            .toList();
    // A sum made of its parts counts before a printed one, a derived dry matter before its reading.
    return rows.stream()
        .filter(r -> r.get("origin").equals("derived"))
        .findFirst()
        .orElseGet(() -> rows.get(0));
  }

  double value(String subject, String batch, String analyte) {
    return Double.parseDouble(analysis(subject, batch, analyte).get("value"));
  }

  private double u(String subject, String batch, String analyte) {
    return Double.parseDouble(analysis(subject, batch, analyte).get("u"));
  }

  private Map<String, String> register(String file, String key, String id, String batch) {
    return SmallOffice.rows(registers.resolve(file)).stream()
        .filter(r -> r.get(key).equals(id))
        .filter(r -> batch.isEmpty() || r.get("batch").equals(batch))
        .findFirst()
        .orElseThrow();
  }

  double lot(String id, String column) {
    return Double.parseDouble(register("lots.csv", "lot_id", id, "").get(column));
  }

  double feed(String id, String batch, String column) {
    return Double.parseDouble(register("feeds.csv", "feed_id", id, batch).get(column));
  }

  double horse(String id, String column) {
    return Double.parseDouble(register("horses.csv", "horse_id", id, "").get(column));
  }

  Map<String, String> delivery(String lot, String client) {
    return SmallOffice.rows(registers.resolve("deliveries.csv")).stream()
        .filter(r -> r.get("lot_id").equals(lot) && r.get("client_id").equals(client))
        .findFirst()
        .orElseThrow();
  }

  double ration(String horse, String item) {
    return SmallOffice.rows(registers.resolve("rations.csv")).stream()
        .filter(r -> r.get("horse_id").equals(horse) && r.get("item").equals(item))
        .mapToDouble(r -> Double.parseDouble(r.get("amount")))
        .findFirst()
        .orElseThrow();
  }

  /** Hay with its analysis; hay that is the client's own has no price. */
  WorkedMix.Item hay(String id) {
    String price = register("lots.csv", "lot_id", id, "").get("price_per_tonne");
    return new WorkedMix.Item(
        id,
        value(id, "", "DM") / 100,
        value(id, "", "NSC_WSC"),
        u(id, "", "NSC_WSC"),
        price.isEmpty() ? 0 : Double.parseDouble(price) / 1000);
  }

  /** A bagged forage with the certificate of its batch. */
  WorkedMix.Item certified(String id, String batch) {
    return new WorkedMix.Item(
        id + " " + batch,
        value(id, batch, "DM") / 100,
        value(id, batch, "NSC_WSC"),
        u(id, batch, "NSC_WSC"),
        feed(id, batch, "price_per_bag") / feed(id, batch, "bag_kg"));
  }

  /** A feed with its label; u of the sum for values of the batch, none for a most. */
  WorkedMix.Item labelled(String id, String batch, double uOfEach) {
    return new WorkedMix.Item(
        (id + " " + batch).strip(),
        feed(id, batch, "dm_pct") / 100,
        feed(id, batch, "wsc_pct_dm") + feed(id, batch, "starch_pct_dm"),
        Math.hypot(uOfEach, uOfEach),
        feed(id, batch, "price_per_bag") / feed(id, batch, "bag_kg"));
  }

  /** The rows of a proposal, by item. */
  Map<String, String> remedy(String horse, String rank, String item) {
    return SmallOffice.rows(end, "remedies.csv").stream()
        .filter(r -> r.get("horse").equals(horse) && r.get("rank").equals(rank))
        .filter(r -> r.get("item").equals(item))
        .findFirst()
        .orElseThrow();
  }

  Map<String, String> horseRow(String horse) {
    return SmallOffice.rows(end, "horses.csv").stream()
        .filter(r -> r.get("horse").equals(horse))
        .findFirst()
        .orElseThrow();
  }

  Map<String, String> diet(String horse, String when, String nutrient) {
    return SmallOffice.rows(end, "diets.csv").stream()
        .filter(r -> r.get("horse").equals(horse) && r.get("when").equals(when))
        .filter(r -> r.get("nutrient").equals(nutrient))
        .findFirst()
        .orElseThrow();
  }

  double changeover(String horse, String rank, int day, String item) {
    return SmallOffice.rows(end, "changeover.csv").stream()
        .filter(r -> r.get("horse").equals(horse) && r.get("rank").equals(rank))
        .filter(r -> r.get("day").equals("" + day) && r.get("item").equals(item))
        .mapToDouble(r -> Double.parseDouble(r.get("kg")))
        .findFirst()
        .orElseThrow();
  }
}
