package rickyard.second;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * What a horse needs per day: for each nutrient the product of a vector of coefficients and a
 * vector of what they are multiplied by.
 */
final class Needs {
  private static final List<String> TABLES =
      List.of("energy-protein", "minerals", "trace-elements", "vitamins");

  /** Of growth; the rows go on with a horse's own age until it counts as grown. */
  private static final int LAST_PRINTED_MONTH = 24;

  private final Books books;
  private final Map<String, String> horse;
  private final String life;
  private final String level;
  private final int month;

  Needs(Books books, Map<String, String> horse, LocalDate day) {
    this.books = books;
    this.horse = horse;
    String status = horse.get("status");
    this.life =
        switch (status) {
          case "pregnant" -> "gestation";
          case "lactating" -> "lactation";
          case "growing" -> "growth";
          default -> status;
        };
    String given = horse.get("level");
    this.level =
        switch (life) {
          case "maintenance" -> given.isEmpty() ? "average" : given;
          case "growth" -> given.isEmpty() ? "untrained" : given;
          case "gestation", "lactation" -> "";
          default -> given;
        };
    this.month =
        switch (life) {
          case "gestation", "lactation" -> Integer.parseInt(horse.get("month"));
          case "growth" -> ageMonths(horse.get("birth_month"), day);
          default -> 0;
        };
  }

  /** Completed months from the first of the month of birth. */
  static int ageMonths(String birthMonth, LocalDate day) {
    return (int) Period.between(YearMonth.parse(birthMonth).atDay(1), day).toTotalMonths();
  }

  OptionalDouble perDay(String nutrient) {
    List<Map<String, String>> rows = rowsOf(nutrient).toList();
    if (rows.isEmpty()) {
      return OptionalDouble.empty();
    }
    RealVector coefficients =
        new ArrayRealVector(
            rows.stream().mapToDouble(r -> Double.parseDouble(r.get("coefficient"))).toArray());
    RealVector drivers =
        new ArrayRealVector(rows.stream().mapToDouble(r -> driver(r.get("driver"))).toArray());
    double factor = nutrient.equals("DE") ? energyFactor() : 1;
    return OptionalDouble.of(coefficients.dotProduct(drivers) * factor);
  }

  private Stream<Map<String, String>> rowsOf(String nutrient) {
    return TABLES.stream()
        .flatMap(t -> books.rows("requirements-2007/" + t, "nutrient", nutrient))
        .filter(this::holds);
  }

  private double energyFactor() {
    return books
        .find("nutrition-settings", "name", "energy_factor_" + horse.get("type"))
        .map(r -> Double.parseDouble(r.get("value")))
        .orElse(1.0);
  }

  private boolean holds(Map<String, String> row) {
    List<String> levels = Arrays.asList(row.get("level").split("\\|", -1));
    boolean isLevel = levels.contains("*") || levels.contains(level);
    String from = row.get("from_month");
    int asOf = life.equals("growth") ? Math.min(month, LAST_PRINTED_MONTH) : month;
    boolean isMonth =
        from.isEmpty()
            || (asOf >= Integer.parseInt(from) && asOf <= Integer.parseInt(row.get("to_month")));
    return Arrays.asList(row.get("life").split("\\|", -1)).contains(life) && isLevel && isMonth;
  }

  private double parameter(String name) {
    return books
        .rows("requirements-2007/parameters", "name", name)
        .filter(this::holds)
        .mapToDouble(r -> Double.parseDouble(r.get("value")))
        .findFirst()
        .orElseThrow();
  }

  private double bodyKg() {
    return Double.parseDouble(horse.get("body_weight_kg"));
  }

  private double matureKg() {
    String given = horse.get("mature_weight_kg");
    return given.isEmpty() ? bodyKg() : Double.parseDouble(given);
  }

  private double driver(String name) {
    return switch (name) {
      case "bw", "bw_muscle" -> bodyKg();
      case "mw" -> matureKg();
      case "bw_work_factor" -> bodyKg() * parameter("work_factor");
      case "sweat" -> bodyKg() * parameter("sweat_kg_per_kg");
      case "milk" -> bodyKg() * parameter("milk_kg_per_kg");
      case "dmi" ->
          (life.equals("gestation") ? matureKg() : bodyKg()) * parameter("dmi_pct_bw") / 100;
      case "cp" -> perDay("CP").orElseThrow();
      case "cp_bw" ->
          rowsOf("CP")
              .filter(r -> r.get("driver").equals("bw"))
              .mapToDouble(r -> Double.parseDouble(r.get("coefficient")) * bodyKg())
              .sum();
      case "fetal_gain" -> fetalGain();
      case "gain" -> gain();
      case "gain_age" -> gain() * month;
      case "gain_age_squared" -> gain() * month * month;
      case "gain_per_efficiency" ->
          gain() / (parameter("gain_efficiency") * parameter("protein_digestibility"));
      case "growth_maintenance" ->
          Math.exp(parameter("maintenance_age_exponent") * Math.log(month))
              * (bodyKg() / 1000)
              * parameter("work_factor");
      default -> throw new IllegalArgumentException("no such driver: " + name);
    };
  }

  /** Derivative of the growth curve {@code MW [9.7 + 90.3 (1 - exp(-0.0772 a))] / 100} by day. */
  private double gain() {
    double shareOfMaturePerMonth =
        parameter("growth_gain_pct") / 100 / Math.exp(parameter("growth_rate_per_month") * month);
    return shareOfMaturePerMonth * matureKg() / parameter("month_days");
  }

  /** Derivative by the day of {@code F = 0.097 MW x 1e-9 X^3.5512}, X days of pregnancy. */
  private double fetalGain() {
    double days = parameter("month_days") * month;
    double exponent = parameter("fetal_exponent");
    double fetus =
        parameter("fetal_share")
            * matureKg()
            * parameter("fetal_scale")
            * Math.exp(exponent * Math.log(days));
    return fetus * exponent / days;
  }
}
