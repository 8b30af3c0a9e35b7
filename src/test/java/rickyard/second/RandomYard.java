package rickyard.second;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A seeded office of random horses, lots, feeds and rations as register text: all types, states of
 * life and sizes; labels as fed and dry, in several units, of every kind of value.
 */
final class RandomYard {
  static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final List<String> MATERIALS =
      List.of(
          "grass-hay",
          "warm-season-grass-hay",
          "legume-hay",
          "mixed-hay",
          "cereal-hay",
          "haylage",
          "straw");
  private static final List<String> ROLES =
      List.of(
          "controlled-forage",
          "balancer",
          "balancer",
          "concentrate",
          "supplement",
          "salt",
          "straw",
          "chaff",
          "beet-pulp",
          "treat",
          "oil");
  private static final List<String> KINDS = List.of("batch", "typical", "max", "min", "");
  private static final String HORSE_COLUMNS =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to";

  private record Column(String name, String unit, String basis, double low, double high) {
    String header() {
      return name + "_" + unit + "_" + basis;
    }
  }

  final StringBuilder horses = new StringBuilder(HORSE_COLUMNS + "\n");
  final StringBuilder lots =
      new StringBuilder(
          "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
              + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n");
  final StringBuilder feeds = new StringBuilder("feed_id,name,role,form,batch,dm_pct,dm_u");
  final StringBuilder rations =
      new StringBuilder("horse_id,item,batch,amount,unit,fed,meals,prepared,since\n");
  final StringBuilder measures = new StringBuilder("client_id,item,measure,kg,weighed_on\n");
  final SortedMap<String, RandomSheet> sheets = new TreeMap<>();

  private final Draws draws;
  private final List<Column> columns;
  private final Map<String, String> roleOf = new LinkedHashMap<>();
  private final List<String> lotIds = new ArrayList<>();

  RandomYard(long seed, int horseCount) {
    this.draws = new Draws(seed);
    this.columns = columns();
    for (Column c : columns) {
      feeds.append(',').append(c.header());
      feeds.append(',').append(c.name()).append("_kind,").append(c.name()).append("_u");
    }
    feeds.append(
        ",bag_kg,price_per_bag,bagged_on,shelf_life_months,full_rate_pct_bw_low,"
            + "full_rate_pct_bw_high,dose_kg_per_day_low,dose_kg_per_day_high,complete\n");
    for (int i = 0; i < 12; i++) {
      addLot("lot" + i);
    }
    for (int i = 0; i < 22; i++) {
      addFeed("feed" + i, ROLES.get(i % ROLES.size()));
    }
    for (int i = 0; i < horseCount; i++) {
      addHorse("horse" + i);
    }
  }

  private List<Column> columns() {
    List<Column> made = new ArrayList<>();
    Map<String, double[]> percent = new LinkedHashMap<>();
    percent.put("cp", new double[] {3, 32});
    percent.put("lys", new double[] {0.1, 2});
    percent.put("adf", new double[] {12, 40});
    percent.put("ndf", new double[] {41, 60});
    percent.put("wsc", new double[] {2, 12});
    percent.put("esc", new double[] {1, 8});
    percent.put("starch", new double[] {0.3, 20});
    percent.put("nsc_wsc", new double[] {4, 30});
    percent.put("ee", new double[] {1, 6});
    percent.put("ash", new double[] {3, 9});
    percent.put("ca", new double[] {0.2, 3});
    percent.put("p", new double[] {0.1, 2});
    percent.put("mg", new double[] {0.1, 1});
    percent.put("k", new double[] {0.3, 3});
    percent.put("na", new double[] {0.02, 2});
    percent.put("cl", new double[] {0.05, 2});
    percent.put("s", new double[] {0.1, 0.5});
    percent.forEach(
        (name, range) -> {
          String unit = draws.of(List.of("pct", "g_per_kg"));
          double factor = unit.equals("pct") ? 1 : 10;
          made.add(new Column(name, unit, basis(), range[0] * factor, range[1] * factor));
        });
    for (String trace : List.of("fe", "zn", "cu", "mn", "se", "i", "co")) {
      double top = List.of("se", "i", "co").contains(trace) ? 4 : 600;
      made.add(new Column(trace, "mg_per_kg", basis(), top / 100, top));
    }
    boolean isJoule = draws.chance(0.5);
    made.add(
        new Column(
            "de",
            isJoule ? "mj_per_kg" : "mcal_per_kg",
            basis(),
            isJoule ? 6 : 1.5,
            isJoule ? 15 : 3.5));
    made.add(new Column("vit_a", "iu_per_kg", basis(), 500, 60000));
    made.add(new Column("vit_d", "iu_per_kg", basis(), 50, 6000));
    made.add(new Column("vit_e", "iu_per_kg", basis(), 10, 12000));
    made.add(new Column("thiamin", "mg_per_kg", basis(), 1, 60));
    made.add(new Column("riboflavin", "mg_per_kg", basis(), 1, 60));
    return made;
  }

  private String basis() {
    return draws.of(List.of("dm", "af"));
  }

  private void addLot(String id) {
    String material = draws.of(MATERIALS);
    String cores = draws.chance(0.5) ? "" + draws.whole(1, 25) : "";
    lots.append("%s,co-op,%s,,1,,,,,no,%s,,%n".formatted(id, material, cores));
    lotIds.add(id);
    if (draws.chance(0.8)) {
      sheets.put(id, RandomSheet.draw(draws));
    }
  }

  private void addFeed(String id, String role) {
    roleOf.put(id, role);
    String u = draws.chance(0.2) ? draws.printed(0.2, 2, 2) : "";
    feeds.append("%s,%s,%s,pellets,,%s,%s".formatted(id, id, role, draws.printed(80, 99, 1), u));
    for (Column c : columns) {
      boolean isGiven = draws.chance(c.name().equals("nsc_wsc") ? 0.2 : 0.7);
      boolean hasU = isGiven && draws.chance(0.15);
      feeds.append(',').append(isGiven ? draws.printed(c.low(), c.high(), 2) : "");
      feeds.append(',').append(isGiven ? draws.of(KINDS) : "");
      feeds.append(',').append(hasU ? draws.printed(c.low() / 20, c.high() / 20, 3) : "");
    }
    feeds.append(",,,,,,,,,no\n");
  }

  private void addHorse(String id) {
    String type = draws.of(List.of("horse", "horse", "pony", "miniature", "donkey"));
    double mature =
        switch (type) {
          case "horse" -> draws.between(420, 900);
          case "pony" -> draws.between(180, 400);
          case "miniature" -> draws.between(80, 120);
          default -> draws.between(140, 260);
        };
    String status =
        draws.of(
            List.of(
                "maintenance", "work", "pregnant", "lactating", "growing", "growing", "stallion"));
    int age = status.equals("growing") ? draws.whole(3, 26) : draws.whole(48, 300);
    double share = status.equals("growing") ? 0.35 + age * 0.022 : draws.between(0.95, 1.1);
    String weight = draws.printed(mature * share, mature * share, 1);
    boolean saysMature = status.equals("growing") || draws.chance(0.3);
    String month =
        switch (status) {
          case "pregnant" -> "" + draws.whole(1, 11);
          case "lactating" -> "" + draws.whole(1, 6);
          default -> "";
        };
    List<String> conditions = new ArrayList<>();
    for (String c : List.of("insulin-dysregulation", "laminitis-past", "pssm", "hypp", "ppid")) {
      if (draws.chance(0.2)) {
        conditions.add(c);
      }
    }
    horses.append(
        String.join(
            ",",
            id,
            "client" + draws.whole(1, 2),
            id,
            type,
            DAY.minusMonths(age).toString().substring(0, 7),
            weight,
            draws.of(List.of("scale", "tape", "guess")),
            ",",
            saysMature ? draws.printed(mature, mature, 0) : "",
            status,
            level(status),
            month,
            "",
            String.join(";", conditions),
            draws.chance(0.8) ? "" + draws.whole(1, 4) : "",
            draws.of(List.of("yes", "no")),
            "0",
            "no",
            "none,,,"));
    horses.append('\n');
    addRation(id, Double.parseDouble(weight));
  }

  private String level(String status) {
    return switch (status) {
      case "maintenance" -> draws.of(List.of("low", "average", "elevated", ""));
      case "work" -> draws.of(List.of("light", "moderate", "heavy", "very-heavy"));
      case "growing" -> draws.of(List.of("", "", "light", "moderate", "heavy", "very-heavy"));
      case "stallion" -> draws.of(List.of("breeding", "non-breeding"));
      default -> "";
    };
  }

  private void addRation(String horse, double kg) {
    int items = draws.whole(1, 6);
    List<String> taken = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      boolean isLot = i == 0 || draws.chance(0.35);
      String item = isLot ? draws.of(lotIds) : draws.of(List.copyOf(roleOf.keySet()));
      if (taken.contains(item)) {
        continue;
      }
      taken.add(item);
      double share = isLot ? draws.between(0.2, 2.2) : share(roleOf.get(item));
      rations.append(amount(horse, item, share, kg, isLot));
    }
  }

  /** A plausible share of the body weight, %. */
  private double share(String role) {
    return switch (role) {
      case "salt" -> draws.between(0.002, 0.02);
      case "balancer", "supplement", "oil" -> draws.between(0.01, 0.15);
      case "treat" -> draws.between(0.02, 0.3);
      default -> draws.between(0.1, 0.9);
    };
  }

  private String amount(String horse, String item, double share, double kg, boolean isLot) {
    boolean isForage =
        isLot || List.of("controlled-forage", "straw", "chaff").contains(roleOf.get(item));
    String unit = draws.of(List.of("kg", "kg", "lb", "pct_bw", "scoop"));
    String amount =
        switch (unit) {
          case "kg" -> draws.printed(share * kg / 100, share * kg / 100, 3);
          case "lb" -> draws.printed(share * kg / 45.359237, share * kg / 45.359237, 3);
          case "pct_bw" -> draws.printed(share, share, 3);
          default -> "" + draws.whole(1, 3);
        };
    if (unit.equals("scoop")) {
      weigh(item, share * kg / 100);
    }
    String meals = draws.chance(0.7) ? "" + draws.whole(1, 4) : "";
    return "%s,%s,,%s,%s,%s,%s,dry,2026-02-01%n"
        .formatted(horse, item, amount, unit, isForage ? "forage" : "bucket", meals);
  }

  private void weigh(String item, double kg) {
    for (String client : List.of("client1", "client2")) {
      String row = client + "," + item + ",scoop,";
      if (measures.indexOf(row) < 0) {
        measures.append(row).append(draws.printed(kg, kg, 3)).append(",2026-01-15\n");
      }
    }
  }
}
