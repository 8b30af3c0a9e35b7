package rickyard.second;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A seeded office as register text in which diets can be put right: hays around the limits, bags,
 * balancer, salt, straw; some without report, price, stock, dose or bag size; in kg or lb.
 */
final class RemedyYard {
  private static final String HORSE_COLUMNS =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n";
  private static final String LOT_COLUMNS =
      "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
          + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n";
  private static final List<String> HAYS =
      List.of("grass-hay", "grass-hay", "grass-hay", "grass-hay", "mixed-hay", "legume-hay");
  private static final List<String> RARE_HAYS = List.of("warm-season-grass-hay", "cereal-hay");
  private static final List<String> ADULT =
      List.of("maintenance", "maintenance", "maintenance", "work", "pregnant", "lactating");

  final boolean isKg;
  final StringBuilder horses = new StringBuilder(HORSE_COLUMNS);
  final StringBuilder lots = new StringBuilder(LOT_COLUMNS);
  final StringBuilder deliveries =
      new StringBuilder(
          "lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on\n");
  final StringBuilder rations =
      new StringBuilder("horse_id,item,batch,amount,unit,fed,meals,prepared,since\n");
  final RemedyFeeds feeds;
  final SortedMap<String, RandomSheet> sheets = new TreeMap<>();

  private final Draws draws;
  private final List<String> hays = new ArrayList<>();

  /** A small office. */
  RemedyYard(long seed) {
    this.draws = new Draws(seed);
    this.isKg = draws.chance(0.6);
    this.feeds = new RemedyFeeds(draws);
    fill(draws.whole(3, 7), draws.whole(2, 5));
  }

  /** An office of so many lots and horses. */
  RemedyYard(long seed, int lotCount, int horseCount) {
    this.draws = new Draws(seed);
    this.isKg = true;
    this.feeds = new RemedyFeeds(draws);
    fill(lotCount, horseCount);
  }

  private void fill(int lotCount, int horseCount) {
    for (int i = 0; i < lotCount; i++) {
      addLot("lot" + i);
    }
    for (int i = 0; i < horseCount; i++) {
      addHorse("horse" + i);
    }
  }

  /** Lots and batches of feeds. */
  int items() {
    return rows(lots) + rows(feeds.text);
  }

  private static int rows(StringBuilder table) {
    return (int) table.chars().filter(c -> c == '\n').count() - 1;
  }

  private void addLot(String id) {
    boolean isStraw = !hays.isEmpty() && draws.chance(0.08);
    boolean isHaylage = !isStraw && draws.chance(0.08);
    String hay = draws.of(draws.chance(0.1) ? RARE_HAYS : HAYS);
    String material = isStraw ? "straw" : isHaylage ? "haylage" : hay;
    boolean isForSale = draws.chance(0.75);
    String holder = draws.of(List.of("co-op", "co-op", "client1", "client2"));
    lots.append(
        String.join(
            ",",
            id,
            holder,
            material,
            "",
            "1",
            "",
            draws.chance(0.75) ? draws.printed(80, draws.chance(0.3) ? 500 : 9000, 0) : "",
            draws.chance(0.8) ? draws.printed(12, 25, 1) : "",
            draws.chance(0.8) ? draws.printed(80, 260, 0) : "",
            isForSale ? "yes" : "no",
            draws.chance(0.7) ? "" + draws.whole(1, 30) : "",
            ",\n"));
    if (!isStraw) {
      hays.add(id);
    }
    if (draws.chance(0.88)) {
      sheets.put(id, RemedySheets.draw(draws, material));
    }
    if (holder.equals("co-op") && draws.chance(0.3)) {
      deliveries.append(
          "%s,%s,%s,2026-02-20,,,2026-02-23,%n"
              .formatted(id, draws.of(List.of("client1", "client2")), draws.printed(200, 2000, 0)));
    }
  }

  private void addHorse(String id) {
    String type = draws.of(List.of("horse", "horse", "horse", "pony", "pony", "donkey"));
    type = draws.chance(0.06) ? "miniature" : type;
    double mature =
        switch (type) {
          case "horse" -> draws.between(420, 700);
          case "pony" -> draws.between(200, 380);
          case "miniature" -> draws.between(85, 120);
          default -> draws.between(150, 250);
        };
    boolean isGrowing = draws.chance(0.08);
    String status = isGrowing ? "growing" : draws.of(ADULT);
    int age = isGrowing ? draws.whole(8, 22) : draws.whole(60, 260);
    double share = isGrowing ? 0.4 + age * 0.021 : draws.between(0.95, 1.08);
    String weight = draws.printed(mature * share, mature * share, 0);
    String client = draws.of(List.of("client1", "client2"));
    horses.append(
        String.join(
            ",",
            id,
            client,
            id,
            type,
            RandomYard.DAY.minusMonths(age).toString().substring(0, 7),
            weight,
            draws.of(List.of("scale", "tape", "guess")),
            ",",
            isGrowing ? draws.printed(mature, mature, 0) : "",
            status,
            level(status),
            status.equals("pregnant") || status.equals("lactating") ? "" + draws.whole(1, 6) : "",
            draws.chance(0.8) ? "" + draws.whole(3, 8) : "",
            conditions(),
            draws.chance(0.85) ? "" + draws.whole(1, 4) : "",
            draws.of(List.of("yes", "no", "no")),
            "0",
            "no",
            "none,,,\n"));
    addRation(id, Double.parseDouble(weight));
  }

  private String level(String status) {
    return switch (status) {
      case "maintenance" -> draws.of(List.of("low", "average", "elevated", ""));
      case "work" -> draws.of(List.of("light", "moderate", "heavy"));
      default -> "";
    };
  }

  private String conditions() {
    List<String> has = new ArrayList<>();
    if (draws.chance(0.75)) {
      has.add(draws.of(List.of("insulin-dysregulation", "laminitis-past", "pssm", "ppid")));
    }
    if (draws.chance(0.12)) {
      has.add("hypp");
    }
    if (draws.chance(0.1)) {
      has.add("dental");
    }
    return String.join(";", has);
  }

  private void addRation(String horse, double kg) {
    String hay = draws.of(hays);
    String other = draws.of(hays);
    boolean isTwo = !other.equals(hay) && draws.chance(0.25);
    double whole = draws.between(1.45, 2.4);
    row(horse, hay, "", isTwo ? whole / 2 : whole, kg, "forage");
    if (isTwo) {
      row(horse, other, "", whole / 2, kg, "forage");
    }
    feeds.drawRation(draws).forEach(f -> row(horse, f.id(), f.batch(), f.percentBw(), kg, f.fed()));
  }

  private void row(
      String horse, String item, String batch, double percentBw, double kg, String fed) {
    String unit = draws.of(List.of("kg", "kg", "lb", "pct_bw"));
    double amount =
        switch (unit) {
          case "kg" -> percentBw * kg / 100;
          case "lb" -> percentBw * kg / 45.359237;
          default -> percentBw;
        };
    int decimals = percentBw < 0.1 ? 3 : draws.whole(1, 3);
    String meals = fed.equals("bucket") && draws.chance(0.4) ? "" + draws.whole(1, 3) : "";
    rations.append(
        "%s,%s,%s,%s,%s,%s,%s,dry,2026-02-01%n"
            .formatted(
                horse, item, batch, draws.printed(amount, amount, decimals), unit, fed, meals));
  }
}
