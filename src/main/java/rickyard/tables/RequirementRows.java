package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.nutrition.Driver;
import rickyard.core.nutrition.EnergyEquation;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.RequirementTables;
import rickyard.core.nutrition.RequirementTables.Parameter;
import rickyard.core.nutrition.RequirementTables.RequirementTerm;
import rickyard.core.nutrition.Scope;
import rickyard.core.nutrition.Source;
import rickyard.tables.NutritionTables.Row;

/** Loads one edition of requirements: a folder below config/ with one file per group. */
final class RequirementRows {
  private static final String EDITION = "requirements-2007";
  private static final List<String> GROUPS =
      List.of("energy-protein", "minerals", "trace-elements", "vitamins");
  private static final List<String> TERM =
      List.of("life", "level", "from_month", "to_month", "nutrient", "driver", "coefficient");
  private static final List<String> TERM_KEY =
      List.of("life", "level", "from_month", "to_month", "nutrient", "driver");
  private static final List<String> PARAMETER =
      List.of("name", "life", "level", "from_month", "to_month", "value");
  private static final List<String> PARAMETER_KEY =
      List.of("name", "life", "level", "from_month", "to_month");
  private static final List<String> TERMS =
      List.of("CONSTANT", "CP", "ADF", "NDF_LESS_ADF", "EE", "NFC", "ASH", "EE_OVER_5");
  private static final int LAST_MONTH = 1200;

  private final NutritionTables.Reading reading;

  RequirementRows(NutritionTables.Reading reading) {
    this.reading = reading;
  }

  RequirementTables tables() {
    List<RequirementTerm> terms = new ArrayList<>();
    for (String group : GROUPS) {
      String name = EDITION + "/" + group + ".csv";
      terms.addAll(reading.rows(name, TERM, TERM_KEY, RequirementRows::term));
    }
    List<Parameter> parameters =
        reading.rows(
            EDITION + "/parameters.csv", PARAMETER, PARAMETER_KEY, RequirementRows::parameter);
    return new RequirementTables(
        EDITION, terms, parameters, new OutsideRows(reading).rules(EDITION + "/outside.csv"));
  }

  private static Optional<RequirementTerm> term(Row row) {
    Optional<Nutrient> nutrient = Nutrient.findByCode(row.text("nutrient"));
    Optional<Driver> driver = Driver.findByCode(row.text("driver"));
    if (nutrient.isEmpty()) {
      row.cells().problem("nutrient", "unknown-word", "a nutrient such as CP");
    }
    if (driver.isEmpty()) {
      row.cells().problem("driver", "unknown-word", "a driver such as bw");
    }
    double coefficient = row.number("coefficient");
    if (nutrient.isEmpty() || driver.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new RequirementTerm(
            scope(row), nutrient.get(), driver.get(), coefficient, row.source(), row.others()));
  }

  private static Optional<Parameter> parameter(Row row) {
    return Optional.of(
        new Parameter(row.text("name"), scope(row), row.number("value"), row.source()));
  }

  static Scope scope(Row row) {
    return Scope.of(
        row.text("life"),
        row.text("level"),
        (int) row.optional("from_month").orElse(0),
        (int) row.optional("to_month").orElse(LAST_MONTH));
  }

  /** The equation of digestible energy; empty if a term is missing. */
  Optional<EnergyEquation> energyEquation() {
    Map<String, Coefficient> byTerm = new TreeMap<>();
    reading
        .rows(
            EDITION + "/de-equation.csv",
            List.of("term", "coefficient"),
            List.of("term"),
            row ->
                Optional.of(
                    new Coefficient(row.text("term"), row.number("coefficient"), row.source())))
        .forEach(c -> byTerm.put(c.term, c));
    if (!byTerm.keySet().containsAll(TERMS)) {
      return Optional.empty();
    }
    List<Double> values = TERMS.stream().map(t -> requireNonNull(byTerm.get(t)).value).toList();
    return Optional.of(
        new EnergyEquation(
            values.get(0),
            values.get(1),
            values.get(2),
            values.get(3),
            values.get(4),
            values.get(5),
            values.get(6),
            values.get(7),
            requireNonNull(byTerm.get(TERMS.get(0))).source));
  }

  private record Coefficient(String term, double value, Source source) {}
}
