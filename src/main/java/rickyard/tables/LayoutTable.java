package rickyard.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.core.quantity.Unit;
import rickyard.intake.interpret.AnalyteRule;
import rickyard.intake.interpret.LayoutHint;
import rickyard.intake.interpret.LayoutHint.What;

/**
 * Loads {@code config/layouts.csv}: one row for each thing that a known layout leaves open.
 *
 * <p>{@code layout_words} are words that must all stand on the page, each group between semicolons
 * within one cell: the laboratory's name, a title, a heading.
 */
final class LayoutTable {
  private static final List<String> COLUMNS =
      List.of("layout_words", "what", "about", "value", "source", "status");
  private static final Map<What, List<String>> VALUES =
      Map.of(
          What.BASIS, List.of("af", "dm"),
          What.DATE_ORDER, List.of("day-first", "month-first"),
          What.DECIMAL_MARK, List.of("point", "comma"));

  private LayoutTable() {}

  static TableFile file(Optional<Path> officeConfig) {
    return TableFile.load(
        "layouts.csv", COLUMNS, List.of("layout_words", "what", "about"), officeConfig);
  }

  /** The hints; what is wrong with a row becomes a problem of the table. */
  static List<LayoutHint> hints(TableFile table, List<AnalyteRule> rules) {
    List<LayoutHint> hints = new ArrayList<>();
    for (TableRow row : table.rows()) {
      hint(row, rules).ifPresent(hints::add);
    }
    return hints;
  }

  private static Optional<LayoutHint> hint(TableRow row, List<AnalyteRule> rules) {
    List<List<String>> phrases = LayoutHint.phrases(row.required("layout_words"));
    if (phrases.isEmpty()) {
      row.problem("layout_words", "no-word", "words of the page that tell the layout");
    }
    String code = row.required("what").toUpperCase(Locale.ROOT).replace('-', '_');
    Optional<What> what =
        Arrays.stream(What.values()).filter(w -> w.name().equals(code)).findFirst();
    if (what.isEmpty()) {
      row.problem(
          "what",
          "unknown-word",
          "basis, unit, date-order, decimal-mark, carbohydrate or nitrate-form");
    }
    String about = row.required("about");
    String value = row.required("value");
    if (what.isEmpty() || phrases.isEmpty() || !isSound(row, what.get(), about, value, rules)) {
      return Optional.empty();
    }
    String where = row.file() + " row " + row.number();
    return Optional.of(new LayoutHint(phrases, what.get(), about, value, where));
  }

  private static boolean isSound(
      TableRow row, What what, String about, String value, List<AnalyteRule> rules) {
    Optional<AnalyteRule> rule =
        rules.stream().filter(r -> r.analyte().code().value().equals(about)).findFirst();
    boolean ofPage = what == What.DATE_ORDER || what == What.DECIMAL_MARK;
    boolean openName = what == What.CARBOHYDRATE || what == What.NITRATE_FORM;
    boolean aboutIsSound = about.equals("*") ? !openName : !ofPage && rule.isPresent();
    if (!aboutIsSound) {
      row.problem(
          "about", "unknown-analyte", openName ? "a code of analytes.csv" : "a code, or * for all");
      return false;
    }
    List<String> allowed =
        openName
            ? rule.map(AnalyteRule::openFor).orElse(List.of())
            : what == What.UNIT
                ? rule.map(r -> r.units().stream().map(Unit::code).toList()).orElse(units())
                : VALUES.getOrDefault(what, List.of());
    if (!allowed.contains(value)) {
      row.problem("value", "unknown-value", "one of " + String.join(", ", allowed));
      return false;
    }
    return true;
  }

  private static List<String> units() {
    return Arrays.stream(Unit.values()).map(Unit::code).toList();
  }
}
