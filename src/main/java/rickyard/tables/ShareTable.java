package rickyard.tables;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.remedy.share.ShareSettings;

/** Loads {@code config/share.csv}: who comes first where too little hay clears, and retests. */
public final class ShareTable {
  private static final List<String> COLUMNS =
      List.of("setting", "key", "value", "unit", "source", "locator", "status");

  private final TableFile table;
  private final ShareSettings settings;

  private ShareTable(TableFile table, ShareSettings settings) {
    this.table = table;
    this.settings = settings;
  }

  /**
   * Loads the table with the office's overrides.
   *
   * @throws UnusableTablesException with every problem found
   */
  public static ShareTable load(Optional<Path> officeConfig) {
    TableFile table = TableFile.load("share.csv", COLUMNS, List.of("setting", "key"), officeConfig);
    SortedMap<String, Integer> ranks = new TreeMap<>();
    int cores = 0;
    int shown = 0;
    for (TableRow row : table.rows()) {
      int value = whole(row);
      switch (row.text("setting")) {
        case "sensitivity" -> ranks.put(row.required("key"), value);
        case "retest-cores" -> cores = value;
        case "retests-shown" -> shown = value;
        default -> row.problem("setting", "unknown", "sensitivity, retest-cores or retests-shown");
      }
    }
    if (!table.problems().isEmpty()) {
      throw new UnusableTablesException(table.problems());
    }
    if (cores == 0 || shown == 0) {
      throw new UnusableTablesException(
          List.of(
              new TableProblem(
                  table.name(),
                  0,
                  "setting",
                  "missing",
                  "a row each of retest-cores and retests-shown",
                  "none")));
    }
    return new ShareTable(table, new ShareSettings(ranks, cores, shown));
  }

  private static int whole(TableRow row) {
    double value = row.requiredNumber("value");
    if (!(value >= 1 && value <= 1000 && value == Math.rint(value))) {
      row.problem("value", "out-of-range", "a whole number from 1 to 1000");
      return 1;
    }
    return (int) value;
  }

  public ShareSettings settings() {
    return settings;
  }

  public TableFile table() {
    return table;
  }
}
