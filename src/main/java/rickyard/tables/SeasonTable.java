package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.season.OverTimeRules;

/**
 * {@code config/season.csv}: from how many tests on something is said of lots over time.
 *
 * @param rules the numbers as {@code core.season} uses them
 * @param file the table read, for version and digest
 */
public record SeasonTable(OverTimeRules rules, TableFile file) {
  private static final List<String> COLUMNS =
      List.of("setting", "key", "value", "source", "locator", "status");
  private static final Set<String> SETTINGS =
      Set.of("pairs-least", "tests-least", "years-least", "rare-chance-pct", "quantity");
  private static final double MOST = 1000;

  public SeasonTable {
    requireNonNull(rules, "rules");
    requireNonNull(file, "file");
  }

  /**
   * Loads the table, with the office's overrides where it has a config folder.
   *
   * @throws UnusableTablesException with every problem of the table
   */
  public static SeasonTable load(Optional<Path> officeConfig) {
    TableFile file = TableFile.load("season.csv", COLUMNS, List.of("setting", "key"), officeConfig);
    file.rows().stream()
        .filter(row -> !SETTINGS.contains(row.text("setting")))
        .forEach(row -> row.problem("setting", "unknown-word", "one of " + settings()));
    int pairs = whole(file, "pairs-least", 2);
    int tests = whole(file, "tests-least", 3);
    int years = whole(file, "years-least", 3);
    double rare = number(file, "rare-chance-pct", 0.01, 50, "0.01 to 50 %");
    List<AnalyteCode> quantities = quantities(file);
    if (quantities.isEmpty() || !file.problems().isEmpty()) {
      throw new UnusableTablesException(file.problems());
    }
    return new SeasonTable(new OverTimeRules(quantities, pairs, tests, years, rare / 100), file);
  }

  private static String settings() {
    return String.join(", ", SETTINGS.stream().sorted().toList());
  }

  private static int whole(TableFile file, String setting, int least) {
    String expected = "a whole number from " + least + " to " + (int) MOST;
    double value = number(file, setting, least, MOST, expected);
    if (value != Math.rint(value)) {
      row(file, setting).problem("value", "out-of-range", expected);
    }
    return (int) value;
  }

  private static double number(
      TableFile file, String setting, double low, double high, String expected) {
    TableRow row = row(file, setting);
    double value = row.requiredNumber("value");
    if (Double.isFinite(value) && (value < low || value > high)) {
      row.problem("value", "out-of-range", expected);
    }
    return Double.isFinite(value) ? value : low;
  }

  private static TableRow row(TableFile file, String setting) {
    return file.rows().stream()
        .filter(r -> r.text("setting").equals(setting))
        .findFirst()
        .orElseThrow(() -> missing(file, "a row of setting " + setting));
  }

  private static UnusableTablesException missing(TableFile file, String expected) {
    return new UnusableTablesException(
        List.of(new TableProblem(file.name(), 0, "setting", "missing-row", expected, "none")));
  }

  private static List<AnalyteCode> quantities(TableFile file) {
    List<TableRow> rows =
        file.rows().stream().filter(r -> r.text("setting").equals("quantity")).toList();
    if (rows.isEmpty()) {
      throw missing(file, "a row of setting quantity");
    }
    SortedMap<Place, AnalyteCode> codes = new TreeMap<>();
    for (TableRow row : rows) {
      double place = row.requiredNumber("value");
      String code = row.text("key");
      if (!code.matches("[A-Z][A-Z0-9_]*")) {
        row.problem("key", "not-an-analyte", "the code of an analyte");
      } else {
        codes.put(new Place(place, code), new AnalyteCode(code));
      }
    }
    return List.copyOf(codes.values());
  }

  private record Place(double number, String code) implements Comparable<Place> {
    @Override
    public int compareTo(Place other) {
      int byNumber = Double.compare(number, other.number);
      return byNumber != 0 ? byNumber : code.compareTo(other.code);
    }
  }
}
