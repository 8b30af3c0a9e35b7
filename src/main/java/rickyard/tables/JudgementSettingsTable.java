package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoublePredicate;
import rickyard.core.judgement.JudgementSettings;

/**
 * {@code config/judgement-settings.csv}: one number or choice of the judging a row. A number that
 * is missing or out of range is a problem of the table.
 *
 * @param settings the settings; where a row has a problem, the safe side of it
 * @param file the table read, for version and digest; its problems are those of the rows too
 */
record JudgementSettingsTable(JudgementSettings settings, TableFile file) {
  private static final List<String> COLUMNS =
      List.of("name", "value", "unit", "source", "locator", "status");

  JudgementSettingsTable {
    requireNonNull(settings, "settings");
    requireNonNull(file, "file");
  }

  /** Loads the table, with the office's overrides where it has a config folder. */
  static JudgementSettingsTable load(Optional<Path> officeConfig) {
    TableFile file =
        TableFile.load("judgement-settings.csv", COLUMNS, List.of("name"), officeConfig);
    Map<String, TableRow> rows = new LinkedHashMap<>();
    file.rows().forEach(r -> rows.put(r.text("name"), r));
    rows.forEach(JudgementSettingsTable::checkName);
    JudgementSettings settings =
        new JudgementSettings(
            number(file, rows, "nfc_allowance", 100, v -> v >= 0 && v <= 100),
            (int) number(file, rows, "most_cores", 1, JudgementSettingsTable::isCount),
            (int) number(file, rows, "advice_cores", 1, JudgementSettingsTable::isCount),
            number(file, rows, "sensitivity_r", 0, v -> v >= -1 && v <= 1),
            regions(rows));
    return new JudgementSettingsTable(settings, file);
  }

  private static boolean isCount(double value) {
    return value >= 1 && value <= 1000 && value == Math.rint(value);
  }

  private static void checkName(String name, TableRow row) {
    List<String> known =
        List.of("nfc_allowance", "most_cores", "advice_cores", "sensitivity_r", "regions");
    if (!known.contains(name)) {
      row.problem("name", "unknown-word", "one of " + String.join(", ", known));
    }
  }

  private static double number(
      TableFile file,
      Map<String, TableRow> rows,
      String name,
      double safe,
      DoublePredicate isAllowed) {
    TableRow row = rows.get(name);
    if (row == null) {
      file.problem(0, "name", "missing-row", "a row " + name);
      return safe;
    }
    double value = row.requiredNumber("value");
    if (Double.isFinite(value) && !isAllowed.test(value)) {
      row.problem("value", "out-of-range", "a number that the setting allows");
    }
    return Double.isFinite(value) && isAllowed.test(value) ? value : safe;
  }

  private static SortedSet<String> regions(Map<String, TableRow> rows) {
    SortedSet<String> regions = new TreeSet<>();
    TableRow row = rows.get("regions");
    if (row != null) {
      Arrays.stream(row.text("value").split(";", -1))
          .map(String::strip)
          .filter(r -> !r.isEmpty())
          .forEach(regions::add);
    }
    return regions;
  }
}
