package rickyard.tables;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.OutsideRule;
import rickyard.tables.NutritionTables.Row;

/** Loads what holds where the tables of requirements have no row. */
final class OutsideRows {
  private static final List<String> COLUMNS =
      List.of(
          "life",
          "level",
          "from_month",
          "to_month",
          "nutrient",
          "rule",
          "first",
          "second",
          "words");
  private static final List<String> KEY =
      List.of("life", "level", "from_month", "to_month", "nutrient");
  private static final List<String> RULES = List.of("none", "as", "continue", "between");

  private final NutritionTables.Reading reading;

  OutsideRows(NutritionTables.Reading reading) {
    this.reading = reading;
  }

  List<OutsideRule> rules(String file) {
    return reading.rows(file, COLUMNS, KEY, OutsideRows::rule);
  }

  private static Optional<OutsideRule> rule(Row row) {
    String code = row.text("nutrient");
    Optional<Nutrient> nutrient = Nutrient.findByCode(code);
    if (nutrient.isEmpty() && !code.isEmpty()) {
      row.cells().problem("nutrient", "unknown-word", "a nutrient such as CP, or blank for all");
    }
    String word = row.oneOf("rule", RULES);
    if (!RULES.contains(word)) {
      return Optional.empty();
    }
    return Optional.of(
        new OutsideRule(
            RequirementRows.scope(row),
            nutrient,
            OutsideRule.Kind.valueOf(word.toUpperCase(Locale.ROOT)),
            stage(row, "first"),
            stage(row, "second"),
            row.cells().required("words"),
            row.source()));
  }

  /** A cell {@code life/level/month}; level and month may be missing. */
  private static Optional<OutsideRule.Stage> stage(Row row, String column) {
    String cell = row.text(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    String[] parts = cell.split("/", -1);
    String month = parts.length > 2 ? parts[2] : "0";
    if (parts.length > 3 || !month.matches("[0-9]{1,4}")) {
      row.cells().problem(column, "not-a-stage", "life/level/month such as growth/=/24");
      return Optional.empty();
    }
    return Optional.of(
        new OutsideRule.Stage(parts[0], parts.length > 1 ? parts[1] : "", Integer.parseInt(month)));
  }
}
