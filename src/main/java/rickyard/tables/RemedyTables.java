package rickyard.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.remedy.LeastPortions;
import rickyard.core.remedy.MassUnit;
import rickyard.core.remedy.RemedySettings;
import rickyard.core.remedy.ScaleSteps;

/** Loads {@code config/remedy.csv}: prices of a change, scale steps, shares, days. */
public final class RemedyTables {
  private static final List<String> COLUMNS =
      List.of("setting", "key", "value", "unit", "source", "locator", "status");

  private final TableFile table;
  private final RemedySettings settings;

  private RemedyTables(TableFile table, RemedySettings settings) {
    this.table = table;
    this.settings = settings;
  }

  /**
   * Loads the table with the office's overrides.
   *
   * @throws UnusableTablesException with every problem found
   */
  public static RemedyTables load(Optional<Path> officeConfig) {
    TableFile table =
        TableFile.load("remedy.csv", COLUMNS, List.of("setting", "key"), officeConfig);
    Rows rows = new Rows(table);
    RemedySettings settings = rows.settings();
    return new RemedyTables(table, settings);
  }

  public RemedySettings settings() {
    return settings;
  }

  public TableFile table() {
    return table;
  }

  /** The rows of the table by setting. */
  private static final class Rows {
    private final TableFile table;

    Rows(TableFile table) {
      this.table = table;
    }

    RemedySettings settings() {
      try {
        RemedySettings settings = read();
        throwIfBad();
        return settings;
      } catch (IllegalArgumentException e) {
        throwIfBad();
        throw bad("a usable set of settings: " + e.getMessage());
      }
    }

    private RemedySettings read() {
      return new RemedySettings(
          number("weight-change"),
          number("weight-target"),
          number("weight-shortfall"),
          number("weight-cost"),
          steps(MassUnit.KG),
          steps(MassUnit.LB),
          shares("controlled-share"),
          number("stock-horizon-days"),
          number("month-days"),
          (int) number("largest-pool"),
          (int) number("largest-number-of-checks"),
          new TreeSet<>(of("chewable-form").stream().map(r -> r.required("value")).toList()),
          days(),
          shares("changeover-share"),
          portions(),
          number("least-retest-chance"),
          number("assumed-relative-u"));
    }

    private void throwIfBad() {
      if (!table.problems().isEmpty()) {
        throw new UnusableTablesException(table.problems());
      }
    }

    private UnusableTablesException bad(String expected) {
      return new UnusableTablesException(
          List.of(new TableProblem(table.name(), 0, "", "unusable", expected, "other values")));
    }

    private List<TableRow> of(String setting) {
      List<TableRow> rows =
          table.rows().stream().filter(r -> r.text("setting").equals(setting)).toList();
      if (rows.isEmpty()) {
        throwIfBad();
        throw bad("a row of setting " + setting);
      }
      return rows;
    }

    private double number(String setting) {
      return of(setting).get(0).requiredNumber("value");
    }

    private List<Double> shares(String setting) {
      List<Double> shares = new ArrayList<>();
      for (TableRow row : of(setting)) {
        double share = row.requiredNumber("value");
        if (!(share > 0 && share <= 1)) {
          row.problem("value", "out-of-range", "a share above 0 and at most 1");
        }
        shares.add(share);
      }
      return shares.stream().sorted().toList();
    }

    private SortedMap<String, Integer> days() {
      SortedMap<String, Integer> days = new TreeMap<>();
      for (TableRow row : of("changeover-days")) {
        double value = row.requiredNumber("value");
        if (!(value >= 0 && value <= 365 && value == Math.rint(value))) {
          row.problem("value", "out-of-range", "whole days from 0 to 365");
        }
        days.put(row.text("key"), (int) value);
      }
      return days;
    }

    private LeastPortions portions() {
      SortedMap<String, Double> portions = new TreeMap<>();
      for (TableRow row : of("least-portion")) {
        double value = row.requiredNumber("value");
        if (!(value >= 0 && value <= 1)) {
          row.problem("value", "out-of-range", "0 to 1 kg per 100 kg of body weight");
        }
        portions.put(row.text("key"), value);
      }
      return new LeastPortions(portions);
    }

    private ScaleSteps steps(MassUnit unit) {
      List<ScaleSteps.Step> steps = new ArrayList<>();
      for (TableRow row : of("scale-step-" + unit.code())) {
        double below = row.number("key").orElse(Double.POSITIVE_INFINITY);
        steps.add(new ScaleSteps.Step(below, row.requiredNumber("value")));
      }
      steps.sort(Comparator.comparingDouble(ScaleSteps.Step::below));
      return new ScaleSteps(unit, steps);
    }
  }
}
