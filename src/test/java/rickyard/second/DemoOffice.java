package rickyard.second;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The demo's registers and what its morning found in the reports, as plain text. */
final class DemoOffice {
  private static final List<String> WORST_LAST =
      List.of(
          "no-limit", "clears", "borderline-under", "cannot-judge", "borderline-over", "exceeds");

  private final Books books;
  private final LocalDate day;
  private final Pantry pantry;
  private final Map<String, List<Map<String, String>>> registers = new HashMap<>();
  private final List<Map<String, String>> analyses;
  private final Map<String, Map<String, String>> horses = new LinkedHashMap<>();

  DemoOffice(Books books, Path folder, Path out, LocalDate day) {
    this.books = books;
    this.day = day;
    this.pantry = new Pantry(books);
    for (String name : List.of("horses", "lots", "feeds", "rations", "measures", "deliveries")) {
      registers.put(name, Csv.read(folder.resolve(name + ".csv")));
    }
    registers.get("horses").forEach(h -> horses.put(h.get("horse_id"), h));
    this.analyses = Csv.read(out.resolve("analyses.csv"));
  }

  Map<String, Map<String, String>> horses() {
    return horses;
  }

  List<Map<String, String>> lots() {
    return registers.get("lots");
  }

  /**
   * What is in force of a lot, or of a batch of a feed, on dry matter; sums are left to be made.
   */
  SortedMap<String, Num> contents(String subject, String batch) {
    SortedMap<String, Num> found = new TreeMap<>();
    for (Map<String, String> row : analyses) {
      String code = row.get("analyte");
      boolean isDm = code.equals("DM");
      boolean isOnDryMatter = row.get("basis").equals(isDm ? "af" : "dm");
      boolean isSum = code.startsWith("NSC_") && row.get("origin").equals("derived");
      boolean isIts = row.get("lot").equals(subject) && row.get("batch").equals(batch);
      if (isIts && row.get("state").equals("in-force") && isOnDryMatter && !isSum) {
        found.merge(code, value(row), (a, b) -> a.u() >= b.u() ? a : b);
      }
    }
    return found;
  }

  SortedMap<String, Num> withSums(SortedMap<String, Num> contents) {
    SortedMap<String, Num> all = new TreeMap<>(contents);
    Sums.add(all, books.settingNumber("nsc_correlation"));
    return all;
  }

  private static Num value(Map<String, String> row) {
    double best = Double.parseDouble(row.get("value"));
    double low = Double.parseDouble(row.get("low"));
    String top = row.get("high");
    double high = top.isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(top);
    double u = Double.parseDouble(row.get("u"));
    boolean isBelow = row.get("raw").startsWith("<");
    boolean isOneSided = isBelow || top.isEmpty();
    return new Num(
        best, low, high, isOneSided ? low : best, isOneSided ? high : best, u, Num.REPORTED);
  }

  private Food food(String item, String batch, boolean isAnalysed) {
    for (Map<String, String> lot : lots()) {
      if (lot.get("lot_id").equals(item)) {
        return pantry.lot(lot, isAnalysed ? contents(item, "") : new TreeMap<>());
      }
    }
    Map<String, String> label =
        registers.get("feeds").stream()
            .filter(f -> f.get("feed_id").equals(item) && f.get("batch").equals(batch))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no food " + item));
    SortedMap<String, Num> certificate =
        isAnalysed && !batch.isEmpty() ? contents(item, batch) : new TreeMap<>();
    Num dm = certificate.remove("DM");
    Map<String, String> kept = new LinkedHashMap<>(label);
    boolean hasSugar =
        List.of("WSC", "ESC", "STARCH", "NSC_WSC").stream().anyMatch(certificate::containsKey);
    if (hasSugar) {
      // a certificate with any sugar takes the place of all of the label's
      kept.keySet().removeIf(c -> c.matches("(wsc|esc|starch|nsc_wsc|nsc_esc)_.*"));
    }
    return pantry.feed(kept, dm == null ? Num.plain(Double.NaN, 0, 0, "") : dm, certificate);
  }

  /**
   * The ration in force, with the values in force; before the first morning nothing is analysed.
   */
  List<Portioned> portions(String horse, boolean isAfter) {
    Map<String, String> row = horses.get(horse);
    String newest =
        rationRows(horse)
            .map(r -> r.get("since"))
            .filter(this::isNotAfterToday)
            .max(String::compareTo)
            .orElseThrow();
    List<Portioned> portions = new ArrayList<>();
    for (Map<String, String> r :
        rationRows(horse).filter(r -> r.get("since").equals(newest)).toList()) {
      Food food = food(r.get("item"), r.get("batch"), isAfter);
      String meals = r.get("meals");
      OptionalInt own =
          meals.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(meals));
      boolean isAdLib = r.get("unit").equals("ad-lib");
      portions.add(
          new Portioned(
              food, isAdLib ? Double.NaN : kg(r, row), 0, r.get("fed").equals("bucket"), own));
    }
    portions.replaceAll(p -> Double.isNaN(p.kg()) ? adLib(p, portions, row) : p);
    if (isAfter) {
      portions.replaceAll(p -> delivered(p, row.get("client_id")));
    }
    return portions;
  }

  private java.util.stream.Stream<Map<String, String>> rationRows(String horse) {
    return registers.get("rations").stream().filter(r -> r.get("horse_id").equals(horse));
  }

  private boolean isNotAfterToday(String date) {
    return !LocalDate.parse(date).isAfter(day);
  }

  /** The dry matter that the type is assumed to eat, less what is weighed; all doubt is in it. */
  private Portioned adLib(Portioned open, List<Portioned> all, Map<String, String> horse) {
    Map<String, String> rule =
        new Evaluated(books, horse, day, new Mixture(books, List.of())).rule();
    double total =
        Double.parseDouble(rule.get("adlib_pct_bw"))
            / 100
            * Double.parseDouble(horse.get("body_weight_kg"));
    double weighed =
        all.stream()
            .filter(p -> !Double.isNaN(p.kg()))
            .mapToDouble(p -> p.kg() * p.food().dryMatter().best() / 100)
            .sum();
    double perDm = 100 / open.food().dryMatter().best();
    double spread = total * Double.parseDouble(rule.get("adlib_u_pct")) / 100;
    return new Portioned(
        open.food(), (total - weighed) * perDm, spread * perDm, open.isBucket(), open.meals());
  }

  private double kg(Map<String, String> row, Map<String, String> horse) {
    double amount = Double.parseDouble(row.get("amount"));
    return switch (row.get("unit")) {
      case "kg" -> amount;
      case "lb" -> amount * 0.45359237;
      case "pct_bw" -> amount * Double.parseDouble(horse.get("body_weight_kg")) / 100;
      default ->
          amount
              * registers.get("measures").stream()
                  .filter(m -> m.get("client_id").equals(horse.get("client_id")))
                  .filter(m -> m.get("item").equals(row.get("item")))
                  .filter(m -> m.get("measure").equals(row.get("unit")))
                  .mapToDouble(m -> Double.parseDouble(m.get("kg")))
                  .findFirst()
                  .orElseThrow();
    };
  }

  /** A lot that is replaced gives its place, at equal dry matter, to what opens soon enough. */
  private Portioned delivered(Portioned p, String client) {
    long within = (long) books.settingNumber("opens_within_days");
    for (Map<String, String> d : registers.get("deliveries")) {
      String opens = d.get("opens_on");
      boolean isSoon = opens.isEmpty() || !LocalDate.parse(opens).isAfter(day.plusDays(within));
      boolean isFinished = !d.get("finished_on").isEmpty() && isNotAfterToday(d.get("finished_on"));
      if (d.get("client_id").equals(client)
          && d.get("replaces").equals(p.food().key())
          && isSoon
          && !isFinished) {
        return p.inPlaceOf(food(d.get("lot_id"), "", true));
      }
    }
    return p;
  }

  Mixture mixture(String horse, boolean isAfter) {
    return new Mixture(books, portions(horse, isAfter));
  }

  Evaluated diet(String horse, boolean isAfter) {
    return new Evaluated(books, horses.get(horse), day, mixture(horse, isAfter));
  }

  /** The groups of a horse; a row with a second condition takes the place of the plain one. */
  private Set<String> groups(Map<String, String> horse) {
    TreeSet<String> has = new TreeSet<>(Arrays.asList(horse.get("conditions").split(";", -1)));
    if (horse.get("status").equals("pregnant")) {
      has.add("pregnant");
      if (Integer.parseInt(horse.get("month")) >= 9) {
        has.add("pregnant-late");
      }
    }
    TreeSet<String> groups = new TreeSet<>();
    for (String condition : has) {
      List<Map<String, String>> rows = books.rows("conditions", "condition", condition).toList();
      List<Map<String, String>> beside =
          rows.stream().filter(r -> has.contains(r.get("with"))).toList();
      List<Map<String, String>> plain = rows.stream().filter(r -> r.get("with").isEmpty()).toList();
      (beside.isEmpty() || plain.containsAll(beside) ? plain : beside)
          .forEach(r -> groups.add(r.get("group")));
    }
    groups.remove("");
    return groups;
  }

  /** By limit: those of the horse's own groups, and those of all horses that it does not clear. */
  SortedMap<String, LotRuling> rulings(String horse, boolean isAfter) {
    Map<String, String> row = horses.get(horse);
    List<Portioned> portions = portions(horse, isAfter);
    Mixture mixture = new Mixture(books, portions);
    SortedMap<String, LotRuling> rulings = new TreeMap<>();
    Set<String> groups = groups(row);
    for (Map<String, String> limit : books.table("limits")) {
      boolean isAll = limit.get("group").equals("all");
      if ((!isAll && !groups.contains(limit.get("group"))) || limit.get("subject").equals("lot")) {
        continue;
      }
      Optional<Num> value = Groups.value(limit, mixture, portions, row);
      double number = Double.parseDouble(limit.get("value"));
      Ruling ruling = Ruling.underMaximum(value, number, Csv.number(limit.get("risk")));
      boolean isSilent =
          ruling.word().equals("cannot-judge") && limit.get("if_missing").equals("silent");
      if (!isSilent && !(isAll && ruling.word().equals("clears"))) {
        rulings.put(limit.get("limit_id"), new LotRuling(value, ruling));
      }
    }
    return rulings;
  }

  static String worst(SortedMap<String, LotRuling> rulings) {
    int worst =
        rulings.values().stream()
            .mapToInt(r -> WORST_LAST.indexOf(r.ruling().word()))
            .max()
            .orElse(0);
    return WORST_LAST.get(worst);
  }
}
