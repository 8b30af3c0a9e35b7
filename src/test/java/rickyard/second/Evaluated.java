package rickyard.second;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A horse's ration evaluated the second way: the lines of diets.csv and its place on the floors.
 */
final class Evaluated {
  private final Books books;
  private final Map<String, String> horse;
  private final LocalDate day;
  private final Mixture mixture;

  Evaluated(Books books, Map<String, String> horse, LocalDate day, Mixture mixture) {
    this.books = books;
    this.horse = horse;
    this.day = day;
    this.mixture = mixture;
  }

  /** Every line by code. */
  Map<String, Line> lines() {
    Map<String, Line> lines = new LinkedHashMap<>();
    lines.put("DM", dryMatter());
    Needs needs = new Needs(books, horse, day);
    for (String code : Mixture.PER_KG.keySet()) {
      Optional<Map<String, String>> tolerance = books.find("tolerances", "analyte", code);
      OptionalDouble max =
          tolerance.isPresent()
              ? OptionalDouble.of(perDay(code, tolerance.get()))
              : OptionalDouble.empty();
      boolean alarms = tolerance.map(t -> t.get("alarm").equals("yes")).orElse(false);
      lines.put(code, Line.of(code, mixture.supply(code), needs.perDay(code), max, alarms));
    }
    lines.put("CA_P", calciumToPhosphorus());
    return lines;
  }

  private double perDay(String code, Map<String, String> tolerance) {
    double max = Double.parseDouble(tolerance.get("max"));
    return tolerance.get("per").endsWith("BW")
        ? max * bodyKg()
        : max * Mixture.PER_KG.get(code) * mixture.totalDm();
  }

  private double bodyKg() {
    return Double.parseDouble(horse.get("body_weight_kg"));
  }

  /** The low end of a taped or guessed weight: what floors are held against. */
  double lowEndKg() {
    String name = "weight_error_" + horse.get("weight_by") + "_pct";
    return bodyKg() * (1 - books.settingNumber(name) / 100);
  }

  Map<String, String> rule() {
    List<String> sick = List.of(books.setting("protected_conditions").split(";", -1));
    boolean isSick = Arrays.stream(horse.get("conditions").split(";", -1)).anyMatch(sick::contains);
    boolean isProtected = List.of("pregnant", "lactating").contains(horse.get("status")) || isSick;
    return books
        .find("intake", "type", horse.get("type"), "state", isProtected ? "protected" : "any")
        .orElseThrow();
  }

  /** Dry matter against the first floor and the usual ceiling. */
  private Line dryMatter() {
    Map<String, String> rule = rule();
    String warn = rule.get("warn_below_pct_bw");
    double floor = Double.parseDouble(warn.isEmpty() ? rule.get("vet_below_pct_bw") : warn);
    double ceiling = Double.parseDouble(rule.get("max_pct_bw"));
    Num total = mixture.dryMatter();
    Mixture.Supply supply = new Mixture.Supply(total, true, true, total.best());
    return Line.of(
        "DM",
        supply,
        OptionalDouble.of(floor * lowEndKg() / 100),
        OptionalDouble.of(ceiling * lowEndKg() / 100),
        true);
  }

  /** Forage dry matter in % of the low end of the body weight, against the floors. */
  String floor() {
    Map<String, String> rule = rule();
    double percent = 100 * mixture.forageDm() / lowEndKg();
    double tie = 1e-9 * percent;
    if (percent + tie < Double.parseDouble(rule.get("refuse_below_pct_bw"))) {
      return "refuse";
    }
    if (percent + tie < Double.parseDouble(rule.get("vet_below_pct_bw"))) {
      return horse.get("vet_plan").equals("yes") ? "warn" : "needs-vet-plan";
    }
    String warn = rule.get("warn_below_pct_bw");
    return !warn.isEmpty() && percent + tie < Double.parseDouble(warn) ? "warn" : "fine";
  }

  /** The ratio, with the errors of both sums taken as independent. */
  private Line calciumToPhosphorus() {
    Mixture.Supply ca = mixture.supply("CA");
    Mixture.Supply p = mixture.supply("P");
    Num over = ca.total();
    Num under = p.total();
    boolean isKnown = ca.isComplete() && p.isComplete() && under.best() > 0;
    String origin = Num.both(over.origin(), under.origin());
    double ratio = isKnown ? over.best() / under.best() : 0;
    double top = isKnown ? ratio : Double.POSITIVE_INFINITY;
    double ofCalcium = over.best() > 0 ? over.u() / over.best() : 0;
    double u = isKnown ? ratio * Math.hypot(ofCalcium, under.u() / under.best()) : 0;
    Num total = new Num(ratio, ratio, top, ratio, top, u, origin);
    double ceiling = origin.equals(Num.REPORTED) ? ratio + 2 * u : ratio;
    boolean isGrowing = horse.get("status").equals("growing");
    double max = books.settingNumber(isGrowing ? "ca_p_max_growing" : "ca_p_max_adult");
    Mixture.Supply supply = new Mixture.Supply(total, isKnown, isKnown, ceiling);
    return Line.of(
        "CA_P",
        supply,
        OptionalDouble.of(books.settingNumber("ca_p_warn_below")),
        OptionalDouble.of(max),
        true);
  }
}
