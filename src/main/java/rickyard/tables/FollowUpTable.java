package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.due.FollowUpSettings;

/**
 * {@code config/follow-ups.csv}: how long weights and tests hold, and how far ahead is listed.
 *
 * @param settings the numbers as {@code core.advice.due} uses them
 * @param file the table read, for version and digest
 */
public record FollowUpTable(FollowUpSettings settings, TableFile file) {
  private static final List<String> COLUMNS =
      List.of("setting", "key", "value", "unit", "source", "locator", "status");
  private static final String SETTINGS = "ahead-days, recheck-days, test-months or weight-days";
  private static final int MOST = 3660;

  public FollowUpTable {
    requireNonNull(settings, "settings");
    requireNonNull(file, "file");
  }

  /**
   * Loads the table, with the office's overrides where it has a config folder.
   *
   * @throws UnusableTablesException with every problem of the table
   */
  public static FollowUpTable load(Optional<Path> officeConfig) {
    TableFile file =
        TableFile.load("follow-ups.csv", COLUMNS, List.of("setting", "key"), officeConfig);
    SortedMap<String, Integer> weightDays = new TreeMap<>();
    SortedMap<String, Integer> testMonths = new TreeMap<>();
    int recheckDays = 0;
    int aheadDays = 0;
    for (TableRow row : file.rows()) {
      int value = whole(row);
      switch (row.text("setting")) {
        case "weight-days" -> weightDays.put(row.text("key"), value);
        case "test-months" -> testMonths.put(row.text("key"), value);
        case "recheck-days" -> recheckDays = value;
        case "ahead-days" -> aheadDays = value;
        default -> row.problem("setting", "unknown-word", SETTINGS);
      }
    }
    List<TableProblem> problems = new ArrayList<>(file.problems());
    require(weightDays.containsKey(""), "weight-days", file, problems);
    require(testMonths.containsKey(""), "test-months", file, problems);
    require(recheckDays > 0, "recheck-days", file, problems);
    require(aheadDays > 0, "ahead-days", file, problems);
    if (!problems.isEmpty()) {
      throw new UnusableTablesException(problems);
    }
    return new FollowUpTable(
        new FollowUpSettings(weightDays, testMonths, recheckDays, aheadDays), file);
  }

  private static void require(
      boolean isThere, String setting, TableFile file, List<TableProblem> problems) {
    if (!isThere) {
      String expected = "a row of setting " + setting + " with a blank key";
      problems.add(new TableProblem(file.name(), 0, "setting", "missing-row", expected, "none"));
    }
  }

  private static int whole(TableRow row) {
    double value = row.requiredNumber("value");
    if (!(value >= 1 && value <= MOST && value == Math.rint(value))) {
      row.problem("value", "out-of-range", "a whole number from 1 to " + MOST);
      return 1;
    }
    return (int) value;
  }
}
