package rickyard.second;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The groups of a horse, and how a ration stands against every diet and meal limit of them. */
final class Groups {
  private final Books books;

  Groups(Books books) {
    this.books = books;
  }

  /** A row of conditions.csv with a second condition takes the place of the plain one. */
  Set<String> of(Map<String, String> horse) {
    TreeSet<String> has = new TreeSet<>(Arrays.asList(horse.get("conditions").split(";", -1)));
    if (horse.get("status").equals("pregnant")) {
      has.add("pregnant");
      if (Integer.parseInt(horse.get("month")) >= 9) {
        has.add("pregnant-late");
      }
    }
    TreeSet<String> groups = new TreeSet<>(List.of("all"));
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

  /** Rows of limits.csv of one of the subjects that concern the horse. */
  List<Map<String, String>> limits(Map<String, String> horse, List<String> subjects) {
    Set<String> groups = of(horse);
    return books.table("limits").stream()
        .filter(l -> groups.contains(l.get("group")) && subjects.contains(l.get("subject")))
        .toList();
  }

  /** By limit of diets and meals; what nobody measured is left out where the limit is silent. */
  SortedMap<String, LotRuling> rulings(
      Map<String, String> horse, Mixture mixture, List<Portioned> portions) {
    SortedMap<String, LotRuling> rulings = new TreeMap<>();
    for (Map<String, String> limit : limits(horse, List.of("diet", "bucket-meal"))) {
      Optional<Num> value = value(limit, mixture, portions, horse);
      double number = Double.parseDouble(limit.get("value"));
      Ruling ruling = Ruling.underMaximum(value, number, Csv.number(limit.get("risk")));
      boolean isSilent = limit.get("if_missing").equals("silent");
      if (!(isSilent && ruling.word().equals("cannot-judge"))) {
        rulings.put(limit.get("limit_id"), new LotRuling(value, ruling));
      }
    }
    return rulings;
  }

  /** What a limit of the whole diet, or of a bucket meal, is held against. */
  static Optional<Num> value(
      Map<String, String> limit,
      Mixture mixture,
      List<Portioned> portions,
      Map<String, String> horse) {
    String code = limit.get("quantity").toUpperCase(Locale.ROOT);
    if (limit.get("subject").equals("diet")) {
      double factor = limit.get("unit").startsWith("ug/kg") ? 1000 : 1;
      return mixture.content(code).map(n -> n.times(factor));
    }
    Num grams = mixture.bucketMeal(code, portions, horse).total();
    boolean isPerKg = limit.get("unit").endsWith("BW");
    double kg = isPerKg ? Double.parseDouble(horse.get("body_weight_kg")) : 1;
    return Optional.of(grams.times(1 / kg));
  }
}
