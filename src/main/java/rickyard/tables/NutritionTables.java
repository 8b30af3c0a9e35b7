package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.OtherValue;
import rickyard.core.nutrition.Settings;
import rickyard.core.nutrition.Settings.Setting;
import rickyard.core.nutrition.Source;
import rickyard.core.nutrition.Standing;

/**
 * Loads the tables that diets are evaluated with: requirements, typical values, roles, high values,
 * tolerances, intake rules, kinds of feed values, settings.
 *
 * @param standards what the core takes
 * @param files the tables read, in a fixed order, for versions and digests
 */
public record NutritionTables(FeedingStandards standards, List<TableFile> files) {

  public NutritionTables {
    requireNonNull(standards, "standards");
    files = List.copyOf(files);
  }

  /** The built-in tables alone. */
  public static NutritionTables load() {
    return load(Optional.empty());
  }

  /**
   * The built-in tables with the office's overrides.
   *
   * @param officeConfig the office's config folder, if there is one
   * @throws UnusableTablesException with every problem found
   */
  public static NutritionTables load(Optional<Path> officeConfig) {
    Reading reading = new Reading(officeConfig);
    FeedingStandards standards = reading.standards(new RequirementRows(reading));
    return new NutritionTables(standards, reading.files);
  }

  /** One loading: the files so far and their problems. */
  static final class Reading {
    private final Optional<Path> officeConfig;
    private final List<TableFile> files = new ArrayList<>();
    private final OtherValueRows others;

    Reading(Optional<Path> officeConfig) {
      this.officeConfig = officeConfig;
      this.others = new OtherValueRows(this);
    }

    /** Loads a file and turns its rows into values; a row with a problem is left out. */
    <T> List<T> rows(
        String name, List<String> columns, List<String> keys, Function<Row, Optional<T>> make) {
      List<String> all = new ArrayList<>(columns);
      all.addAll(List.of("source", "locator", "status"));
      TableFile file = TableFile.load(name, all, keys, officeConfig);
      files.add(file);
      List<T> made = new ArrayList<>();
      for (TableRow row : file.rows()) {
        made.addAll(new Row(file, row, othersOf(name, keys, row)).take(make));
      }
      return made;
    }

    private List<OtherValue> othersOf(String table, List<String> keys, TableRow row) {
      // the table of other values has none for its own rows, and is read before it is kept
      return table.equals(OtherValueRows.FILE)
          ? List.of()
          : others.of(table, keys.stream().map(row::text).toList());
    }

    private FeedingStandards standards(RequirementRows requirements) {
      var tables = requirements.tables();
      var energy = requirements.energyEquation();
      var typical = rows("typical-values.csv", TYPICAL, MATERIAL_ANALYTE, NutritionRows::typical);
      var roles = rows("roles.csv", ROLES, List.of("role"), NutritionRows::role);
      var high = rows("role-high-values.csv", HIGH, ROLE_ANALYTE, NutritionRows::high);
      var tolerances =
          rows("tolerances.csv", TOLERANCES, List.of("analyte"), NutritionRows::tolerance);
      var intake = rows("intake.csv", INTAKE, List.of("type", "state"), NutritionRows::intake);
      var kinds = rows("feed-kinds.csv", KINDS, List.of("kind", "analyte"), NutritionRows::kind);
      var settings =
          rows("nutrition-settings.csv", SETTINGS, List.of("name"), NutritionRows::setting);
      List<TableProblem> problems = new ArrayList<>();
      files.forEach(f -> problems.addAll(f.problems()));
      problems.addAll(NutritionGaps.in(settings, intake, kinds));
      problems.addAll(others.unplaced());
      if (energy.isEmpty()) {
        problems.add(NutritionGaps.gap("requirements-2007/de-equation.csv", "all of its terms"));
      }
      if (!problems.isEmpty()) {
        throw new UnusableTablesException(problems);
      }
      var byName = new TreeMap<String, Setting>();
      settings.forEach(s -> byName.put(s.name(), s));
      return new FeedingStandards(
          tables,
          energy.orElseThrow(),
          typical,
          roles,
          high,
          tolerances,
          intake,
          kinds,
          new Settings(byName));
    }
  }

  private static final List<String> TYPICAL =
      List.of("material", "analyte", "unit", "mean", "u", "low", "high");
  private static final List<String> MATERIAL_ANALYTE = List.of("material", "analyte");
  private static final List<String> ROLES = List.of("role", "forage", "straw", "silence");
  private static final List<String> HIGH = List.of("role", "analyte", "value", "unit");
  private static final List<String> ROLE_ANALYTE = List.of("role", "analyte");
  private static final List<String> TOLERANCES = List.of("analyte", "max", "per", "alarm");
  private static final List<String> INTAKE =
      List.of(
          "type",
          "state",
          "warn_below_pct_bw",
          "vet_below_pct_bw",
          "refuse_below_pct_bw",
          "max_pct_bw",
          "adlib_pct_bw",
          "adlib_u_pct",
          "straw_usual_pct",
          "straw_hard_pct");
  private static final List<String> KINDS = List.of("kind", "analyte", "u", "u_rel_pct");
  private static final List<String> SETTINGS = List.of("name", "value", "unit");

  /** A row with the source it gives to whatever is made of it. */
  record Row(TableFile file, TableRow cells, List<OtherValue> others) {

    /** The value made of the row, or a problem noted where its numbers break an invariant. */
    <T> List<T> take(Function<Row, Optional<T>> make) {
      int before = file.problems().size();
      try {
        Optional<T> made = make.apply(this);
        return file.problems().size() == before ? made.stream().toList() : List.of();
      } catch (IllegalArgumentException e) {
        if (file.problems().size() == before) {
          cells.problem("", "not-legal", String.valueOf(e.getMessage()));
        }
        return List.of();
      }
    }

    String text(String column) {
      return cells.text(column);
    }

    double number(String column) {
      return cells.requiredNumber(column);
    }

    OptionalDouble optional(String column) {
      return cells.number(column);
    }

    boolean yes(String column) {
      return oneOf(column, List.of("yes", "no")).equals("yes");
    }

    String oneOf(String column, List<String> choices) {
      String found = cells.text(column);
      if (!choices.contains(found)) {
        cells.problem(column, "unknown-word", "one of " + String.join(", ", choices));
      }
      return found;
    }

    Source source() {
      Standing standing =
          Standing.findByCode(cells.text("status"))
              .orElseGet(
                  () -> {
                    cells.problem("status", "unknown-word", "a status such as memory or secondary");
                    return Standing.ASSUMED;
                  });
      String office = cells.isOffice() ? " office" : "";
      return new Source(
          file.name() + " " + file.version() + office,
          cells.number(),
          cells.text("source"),
          cells.text("locator"),
          standing);
    }

    AnalyteCode analyte() {
      return new AnalyteCode(cells.required("analyte"));
    }
  }
}
