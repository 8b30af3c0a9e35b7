package rickyard.registers;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.Level;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationItem;
import rickyard.core.nutrition.WeightBy;
import rickyard.tables.FormulaGuard;

class RegistersPropertyTest {
  private static final String LETTERS = "abcXYZ019 =+-@'\"\n,;éß漢";

  @TempDir private Path folder;

  /** A table in the making: every row has every column, in the order of the first row. */
  private static final class Sheet {
    private final List<String> columns = new ArrayList<>();
    private final List<Map<String, String>> rows = new ArrayList<>();

    Map<String, String> row() {
      Map<String, String> row = new TreeMap<>();
      rows.add(row);
      return row;
    }

    Sheet columns(Register register) {
      register.columns().forEach(column -> columns.add(column.names().get(0)));
      return this;
    }

    byte[] bytes(Random random, char delimiter, boolean comma) {
      Collections.shuffle(columns, random);
      StringBuilder out = new StringBuilder();
      line(out, columns, delimiter);
      for (Map<String, String> row : rows) {
        List<String> cells = new ArrayList<>();
        for (String column : columns) {
          String cell = row.getOrDefault(column, "");
          boolean decimal = cell.matches("[0-9]+\\.[0-9]+");
          cells.add(comma && decimal ? cell.replace('.', ',') : cell);
        }
        line(out, cells, delimiter);
      }
      return out.toString().getBytes(UTF_8);
    }

    private static void line(StringBuilder out, List<String> cells, char delimiter) {
      out.append(
              cells.stream()
                  .map(c -> "\"" + FormulaGuard.protect(c).replace("\"", "\"\"") + "\"")
                  .collect(Collectors.joining(String.valueOf(delimiter))))
          .append("\r\n");
    }
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder("n");
    int length = random.nextInt(8);
    for (int i = 0; i < length; i++) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return (random.nextBoolean() ? text.substring(1) + "n" : text + "n").strip();
  }

  private static String decimal(Random random, int from, int to) {
    return String.format(
        Locale.ROOT, "%d.%d", from + random.nextInt(to - from), 1 + random.nextInt(9));
  }

  private static <T> T oneOf(Random random, T[] all) {
    return all[random.nextInt(all.length)];
  }

  private static OptionalDouble number(Map<String, String> row, String column) {
    String cell = row.getOrDefault(column, "");
    return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
  }

  private static String day(Random random) {
    return OfficeFolder.AS_OF.minusDays(random.nextInt(900)).toString();
  }

  private static Horse horse(Random random, String id, String client, Map<String, String> row) {
    HorseStatus status = oneOf(random, HorseStatus.values());
    Level level =
        switch (status) {
          case MAINTENANCE -> oneOf(random, new Level[] {Level.LOW, Level.ELEVATED});
          case WORK -> oneOf(random, new Level[] {Level.LIGHT, Level.VERY_HEAVY});
          case STALLION -> oneOf(random, new Level[] {Level.BREEDING, Level.NON_BREEDING});
          case PREGNANT, LACTATING, GROWING -> Level.NONE;
        };
    boolean counts = status == HorseStatus.PREGNANT || status == HorseStatus.LACTATING;
    OptionalInt month = counts ? OptionalInt.of(1 + random.nextInt(11)) : OptionalInt.empty();
    HorseType type = oneOf(random, HorseType.values());
    WeightBy by = oneOf(random, WeightBy.values());
    Extras extras = oneOf(random, Extras.values());
    YearMonth birth = YearMonth.of(2026, 5).minusMonths(random.nextInt(200));
    LocalDate weighed = LocalDate.parse(day(random));
    row.put("horse_id", id);
    row.put("client_id", client);
    row.put("name", text(random));
    row.put("type", type.code());
    row.put("birth_month", birth.toString());
    row.put("body_weight_kg", decimal(random, 80, 900));
    row.put("weight_by", by.code());
    row.put("weighed_on", weighed.toString());
    row.put("mature_weight_kg", decimal(random, 80, 900));
    row.put("status", status.code());
    row.put("level", level.code());
    row.put("month", month.isPresent() ? String.valueOf(month.getAsInt()) : "");
    row.put("body_condition", random.nextBoolean() ? "" : decimal(random, 1, 8));
    row.put("conditions", random.nextBoolean() ? "" : "ppid; hypp");
    row.put("vet_plan", random.nextBoolean() ? "yes" : "no");
    row.put("grazing_hours_per_day", random.nextBoolean() ? "" : decimal(random, 0, 23));
    row.put("extras", extras.code());
    row.put("herd", random.nextBoolean() ? "" : text(random));
    return new Horse(
        id,
        client,
        row.getOrDefault("name", ""),
        type,
        Optional.of(birth),
        number(row, "body_weight_kg").orElseThrow(),
        by,
        Optional.of(weighed),
        OptionalDouble.empty(),
        number(row, "mature_weight_kg"),
        status,
        level,
        month,
        number(row, "body_condition"),
        row.getOrDefault("conditions", "").isEmpty()
            ? new TreeSet<>()
            : new TreeSet<>(List.of("ppid", "hypp")),
        OptionalInt.empty(),
        "yes".equals(row.get("vet_plan")),
        number(row, "grazing_hours_per_day"),
        false,
        extras,
        row.getOrDefault("herd", ""),
        Optional.empty(),
        Optional.empty());
  }

  private static Lot lot(Random random, String id, String holder, Map<String, String> row) {
    row.put("lot_id", id);
    row.put("holder", holder);
    row.put("material", "grass-hay");
    row.put("legume_pct", decimal(random, 0, 99));
    row.put("cutting", text(random));
    row.put("harvested_on", "2023-01-01");
    row.put("stock_kg", decimal(random, 0, 90000));
    row.put("bale_kg", random.nextBoolean() ? "" : decimal(random, 10, 400));
    row.put("for_sale", "yes");
    row.put("cores", "12");
    row.put("sampled_by", text(random));
    return new Lot(
        id,
        holder,
        "grass-hay",
        number(row, "legume_pct"),
        row.getOrDefault("cutting", ""),
        Optional.of(LocalDate.of(2023, 1, 1)),
        number(row, "stock_kg"),
        number(row, "bale_kg"),
        OptionalDouble.empty(),
        true,
        OptionalInt.of(12),
        Optional.empty(),
        row.getOrDefault("sampled_by", ""));
  }

  @Test
  void aRandomOfficeWrittenAndReadBackIsTheSameInAnyColumnOrderAndDelimiter() {
    long seed = 424_242L;
    Random random = new Random(seed);
    for (int round = 0; round < 40; round++) {
      String where = "seed " + seed + ", round " + round;
      SortedMap<String, Client> clients = new TreeMap<>();
      SortedMap<String, Horse> horses = new TreeMap<>();
      SortedMap<String, Lot> lots = new TreeMap<>();
      List<Delivery> deliveries = new ArrayList<>();
      List<Ration> rations = new ArrayList<>();
      List<Decision> decisions = new ArrayList<>();
      Sheet clientSheet = new Sheet().columns(Register.CLIENTS);
      Sheet horseSheet = new Sheet().columns(Register.HORSES);
      Sheet lotSheet = new Sheet().columns(Register.LOTS);
      Sheet deliverySheet = new Sheet().columns(Register.DELIVERIES);
      Sheet rationSheet = new Sheet().columns(Register.RATIONS);
      Sheet decisionSheet = new Sheet().columns(Register.DECISIONS);
      for (int i = 0; i < 3 + random.nextInt(4); i++) {
        String client = "C" + i;
        Client owner = new Client(client, text(random), text(random), "+44 1", "A", "kg");
        clients.put(client, owner);
        clientSheet
            .row()
            .putAll(
                Map.of(
                    "client_id",
                    client,
                    "name",
                    owner.name(),
                    "email",
                    owner.email(),
                    "phone",
                    "+44 1",
                    "adviser",
                    "A",
                    "units",
                    "kg"));
        String lot = "L-" + i;
        lots.put(lot, lot(random, lot, client, lotSheet.row()));
        String horse = "-H" + i;
        horses.put(horse, horse(random, horse, client, horseSheet.row()));
        String amount = decimal(random, 0, 20);
        rationSheet
            .row()
            .putAll(
                Map.of(
                    "horse_id",
                    horse,
                    "item",
                    lot,
                    "amount",
                    amount,
                    "unit",
                    "kg",
                    "fed",
                    "forage",
                    "prepared",
                    "soaked",
                    "since",
                    "2026-01-02"));
        rations.add(
            new Ration(
                horse,
                LocalDate.of(2026, 1, 2),
                List.of(
                    new RationItem(
                        lot,
                        "",
                        Double.parseDouble(amount),
                        "kg",
                        true,
                        OptionalInt.empty(),
                        "soaked",
                        i + 2))));
        deliverySheet
            .row()
            .putAll(
                Map.of(
                    "lot_id",
                    lot,
                    "client_id",
                    client,
                    "kg",
                    "500.5",
                    "delivered_on",
                    "2026-05-01"));
        deliveries.add(
            new Delivery(
                lot,
                client,
                OptionalDouble.of(500.5),
                LocalDate.of(2026, 5, 1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        String why = text(random);
        decisionSheet
            .row()
            .putAll(
                Map.of(
                    "date", "2026-05-02", "about", horse, "kind", "told", "by", "Ash", "why", why));
        decisions.add(
            new Decision(
                LocalDate.of(2026, 5, 2), horse, "told", "", Optional.empty(), "Ash", why, i + 2));
      }
      boolean comma = round % 3 == 1;
      char delimiter = round % 3 == 0 ? ',' : round % 3 == 1 ? ';' : '\t';

      Loaded loaded =
          new OfficeFolder(folder)
              .with("clients.csv", clientSheet.bytes(random, delimiter, comma))
              .with("horses.csv", horseSheet.bytes(random, delimiter, comma))
              .with("lots.csv", lotSheet.bytes(random, delimiter, comma))
              .with("deliveries.csv", deliverySheet.bytes(random, delimiter, comma))
              .with("rations.csv", rationSheet.bytes(random, delimiter, comma))
              .with("measures.csv", "client_id,item,measure,kg,weighed_on\n")
              .with("decisions.csv", decisionSheet.bytes(random, delimiter, comma))
              .load();

      assertEquals(List.of(), loaded.fatal(), where);
      assertEquals(List.of(), loaded.badRows(), where);
      Office office = loaded.office();
      assertEquals(clients, office.clients(), where);
      assertEquals(horses, office.horses(), where);
      assertEquals(lots, office.lots(), where);
      assertEquals(deliveries, office.deliveries(), where);
      assertEquals(
          rations.stream().sorted(java.util.Comparator.comparing(Ration::horseId)).toList(),
          office.rations(),
          where);
      assertEquals(decisions, office.decisions(), where);
    }
  }

  // 1 lb = 0.45359237 kg by definition.
  @Test
  void poundsAndKilogramsOfTheSameWeightAreTheSame() {
    long seed = 99L;
    Random random = new Random(seed);
    StringBuilder inKg = new StringBuilder("client_id,item,measure,kg,weighed_on\n");
    StringBuilder inLb = new StringBuilder("client_id,item,measure,lb,weighed_on\n");
    List<Double> expected = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      String pounds = decimal(random, 1, 1000);
      java.math.BigDecimal kg =
          new java.math.BigDecimal(pounds).multiply(new java.math.BigDecimal("0.45359237"));
      LocalDate on = LocalDate.of(2024, 1, 1).plusDays(i);
      inKg.append("C1,F1,scoop,").append(kg.toPlainString()).append(',').append(on).append('\n');
      inLb.append("C1,F1,scoop,").append(pounds).append(',').append(on).append('\n');
      expected.add(kg.doubleValue());
    }
    OfficeFolder office = new OfficeFolder(folder);
    office.with("rations.csv", "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n");

    Office metric = office.with("measures.csv", inKg.toString()).load().office();
    Office imperial = office.with("measures.csv", inLb.toString()).load().office();

    for (int i = 0; i < expected.size(); i++) {
      double kg = expected.get(i);
      assertEquals(kg, metric.measures().get(i).kg(), "seed " + seed);
      assertEquals(kg, imperial.measures().get(i).kg(), kg * 1e-12, "seed " + seed);
    }
  }

  @Test
  void theOrderOfRowsChangesNothingButDecisions() {
    long seed = 5L;
    Random random = new Random(seed);
    Office plain = new OfficeFolder(folder).load().office();
    for (int round = 0; round < 20; round++) {
      Office shuffled =
          new OfficeFolder(folder)
              .with("horses.csv", shuffled(OfficeFolder.HORSES, random))
              .with("feeds.csv", OfficeFolder.FEEDS)
              .with("lots.csv", shuffled(OfficeFolder.LOTS, random))
              .with("rations.csv", shuffled(OfficeFolder.RATIONS, random))
              .with("measures.csv", shuffled(OfficeFolder.MEASURES, random))
              .load()
              .office();
      assertEquals(plain.horses(), shuffled.horses(), "seed " + seed);
      assertEquals(plain.lots(), shuffled.lots(), "seed " + seed);
      // The row says where an item stands, so that it moves with it.
      assertEquals(placeless(plain.rations()), placeless(shuffled.rations()), "seed " + seed);
      assertEquals(plain.measures(), shuffled.measures(), "seed " + seed);
    }
  }

  private static String shuffled(String table, Random random) {
    List<String> lines = new ArrayList<>(table.lines().toList());
    String header = lines.remove(0);
    Collections.shuffle(lines, random);
    return header + "\n" + String.join("\n", lines) + "\n";
  }

  private static List<Ration> placeless(List<Ration> rations) {
    return rations.stream()
        .map(
            r ->
                new Ration(
                    r.horseId(),
                    r.since(),
                    r.items().stream()
                        .map(
                            a ->
                                new RationItem(
                                    a.item(),
                                    a.batch(),
                                    a.amount(),
                                    a.unit(),
                                    a.asForage(),
                                    a.meals(),
                                    a.prepared()))
                        .toList()))
        .toList();
  }
}
