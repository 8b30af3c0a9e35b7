package rickyard.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rickyard.core.nutrition.OtherValue;
import rickyard.tables.NutritionTables.Row;

/** Loads what other sources give for rows of the tables, and hands each row its own. */
final class OtherValueRows {
  static final String FILE = "other-values.csv";
  private static final List<String> COLUMNS = List.of("table", "row", "value", "use", "words");
  private static final List<String> KEY = List.of("table", "row", "value");

  private final Map<String, List<OtherValue>> byRow = new HashMap<>();
  private final Map<String, TableRow> office = new HashMap<>();
  private final Set<String> placed = new HashSet<>();

  OtherValueRows(NutritionTables.Reading reading) {
    reading.rows(FILE, COLUMNS, KEY, this::take);
  }

  private Optional<OtherValue> take(Row row) {
    boolean isSaid = row.oneOf("use", List.of("say", "keep")).equals("say");
    OtherValue other =
        new OtherValue(row.number("value"), isSaid, row.cells().required("words"), row.source());
    String place = place(row.text("table"), row.text("row"));
    byRow.computeIfAbsent(place, p -> new ArrayList<>()).add(other);
    if (row.cells().isOffice()) {
      office.put(place, row.cells());
    }
    return Optional.of(other);
  }

  private static String place(String table, String row) {
    return table + "\n" + row;
  }

  /** What others give for the row with these key cells. */
  List<OtherValue> of(String table, List<String> key) {
    String place = place(table, String.join(";", key));
    placed.add(place);
    return byRow.getOrDefault(place, List.of());
  }

  /** Rows of the office that name no row of any table. */
  List<TableProblem> unplaced() {
    List<TableProblem> problems = new ArrayList<>();
    office.forEach(
        (place, row) -> {
          if (!placed.contains(place)) {
            problems.add(
                new TableProblem(
                    row.file(),
                    row.number(),
                    "row",
                    "no-such-row",
                    "the key of a row of " + row.text("table") + ", its cells joined by semicolons",
                    row.text("row")));
          }
        });
    return problems;
  }
}
