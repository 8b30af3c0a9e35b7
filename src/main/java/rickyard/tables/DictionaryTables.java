package rickyard.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;
import rickyard.intake.check.Usual;
import rickyard.intake.interpret.AnalyteRule;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.interpret.Kind;
import rickyard.intake.interpret.LayoutHint;
import rickyard.intake.interpret.Phrase;

/**
 * Loads {@code config/analytes.csv}, {@code config/spellings.csv} and {@code config/layouts.csv}
 * into the reader's dictionary, and {@code config/usual-by-material.csv} into what it holds figures
 * against.
 *
 * <p>The order of {@code analytes.csv} is the order of lists. Every spelling of kind ANALYTE names
 * a code of {@code analytes.csv}.
 */
public final class DictionaryTables {
  private static final List<String> ANALYTES =
      List.of(
          "code",
          "name",
          "unit",
          "basis",
          "digits",
          "use",
          "units",
          "ceiling",
          "usual_low",
          "usual_high",
          "may_be",
          "source",
          "status");
  private static final List<String> SPELLINGS =
      List.of("spelling", "kind", "meaning", "language", "source", "status");

  private static final List<String> USUAL =
      List.of("material", "words", "analyte", "low", "high", "source", "locator", "status");

  private DictionaryTables() {}

  /**
   * The dictionary from the built-in tables and the office's overrides.
   *
   * @param officeConfig the office's config folder, if there is one
   * @throws UnusableTablesException with every problem of these tables
   */
  public static Dictionary load(Optional<Path> officeConfig) {
    TableFile analytes = analytes(officeConfig);
    TableFile spellings = spellings(officeConfig);
    TableFile usual = usual(officeConfig);
    List<AnalyteRule> rules = new ArrayList<>();
    for (TableRow row : analytes.rows()) {
      rule(row, rules.size() + 1).ifPresent(rules::add);
    }
    List<Phrase> phrases = new ArrayList<>();
    Map<List<String>, String> seen = new TreeMap<>(Comparator.comparing(List::toString));
    for (TableRow row : spellings.rows()) {
      phrase(row, rules).ifPresent(phrase -> add(row, phrase, seen, phrases));
    }
    List<Usual> ranges = new ArrayList<>();
    usual.rows().forEach(row -> usual(row, rules).ifPresent(ranges::add));
    TableFile layouts = LayoutTable.file(officeConfig);
    List<LayoutHint> hints = LayoutTable.hints(layouts, rules);
    List<TableProblem> problems = new ArrayList<>(analytes.problems());
    problems.addAll(spellings.problems());
    problems.addAll(usual.problems());
    problems.addAll(layouts.problems());
    if (!problems.isEmpty()) {
      throw new UnusableTablesException(problems);
    }
    return new Dictionary(
        rules,
        phrases,
        ranges,
        hints,
        analytes.digest() + spellings.digest() + usual.digest() + layouts.digest());
  }

  /** The three tables, for their versions and digests. */
  public static List<TableFile> files(Optional<Path> officeConfig) {
    return List.of(
        analytes(officeConfig),
        spellings(officeConfig),
        usual(officeConfig),
        LayoutTable.file(officeConfig));
  }

  private static TableFile analytes(Optional<Path> officeConfig) {
    return TableFile.load("analytes.csv", ANALYTES, List.of("code"), officeConfig);
  }

  private static TableFile spellings(Optional<Path> officeConfig) {
    return TableFile.load("spellings.csv", SPELLINGS, List.of("spelling", "kind"), officeConfig);
  }

  private static TableFile usual(Optional<Path> officeConfig) {
    return TableFile.load(
        "usual-by-material.csv", USUAL, List.of("material", "analyte"), officeConfig);
  }

  private static Optional<Usual> usual(TableRow row, List<AnalyteRule> rules) {
    String code = row.required("analyte");
    double low = row.requiredNumber("low");
    double high = row.requiredNumber("high");
    Set<String> words =
        Arrays.stream(row.required("words").split(";", -1))
            .map(w -> w.strip().toLowerCase(Locale.ROOT))
            .filter(w -> !w.isEmpty())
            .collect(Collectors.toSet());
    if (rules.stream().noneMatch(r -> r.analyte().code().value().equals(code))) {
      row.problem("analyte", "unknown-analyte", "a code of analytes.csv");
      return Optional.empty();
    }
    if (!(low >= 0 && low <= high)) {
      row.problem("high", "out-of-order", "a number not below low");
      return Optional.empty();
    }
    return Optional.of(
        new Usual(row.required("material"), words, new AnalyteCode(code), low, high));
  }

  /** Two spellings that are the same words must mean the same thing. */
  private static void add(
      TableRow row, Phrase phrase, Map<List<String>, String> seen, List<Phrase> into) {
    List<String> key = new ArrayList<>(phrase.words());
    key.add(phrase.kind().name());
    String known = seen.putIfAbsent(key, phrase.meaning());
    if (known != null && !known.equals(phrase.meaning())) {
      row.problem("meaning", "two-meanings", known + ", as for the same words before");
    }
    into.add(phrase);
  }

  private static Optional<AnalyteRule> rule(TableRow row, int order) {
    String code = row.required("code");
    Optional<Unit> unit = unit(row, "unit", row.required("unit"));
    List<Unit> units = new ArrayList<>();
    for (String each : row.required("units").split(";", -1)) {
      unit(row, "units", each.strip()).ifPresent(units::add);
    }
    double digits = row.requiredNumber("digits");
    double ceiling = row.requiredNumber("ceiling");
    Optional<Basis> basis =
        Arrays.stream(Basis.values()).filter(b -> b.code().equals(row.text("basis"))).findFirst();
    if (basis.isEmpty()) {
      row.problem("basis", "unknown-basis", "af, dm or none");
    }
    Optional<AnalyteRule.Use> use = constant(AnalyteRule.Use.values(), row, "use");
    if (!code.matches("[A-Z][A-Z0-9_]*")) {
      row.problem("code", "not-a-code", "upper-case letters, digits and underscores");
      return Optional.empty();
    }
    double low = row.number("usual_low").orElse(0);
    double high = row.number("usual_high").orElse(Double.POSITIVE_INFINITY);
    boolean sound = low >= 0 && low <= high && digits >= 0 && digits <= 6 && ceiling > 0;
    if (unit.isEmpty()
        || basis.isEmpty()
        || use.isEmpty()
        || !sound
        || !units.contains(unit.get())) {
      row.problem("units", "unsound-row", "a unit among units, digits 0..6, ceiling above 0");
      return Optional.empty();
    }
    List<String> mayBe =
        Arrays.stream(row.text("may_be").split(";", -1))
            .map(String::strip)
            .filter(c -> !c.isEmpty())
            .toList();
    Analyte analyte =
        new Analyte(
            new AnalyteCode(code),
            row.required("name"),
            unit.get(),
            basis.get(),
            (int) digits,
            order);
    return Optional.of(new AnalyteRule(analyte, use.get(), units, ceiling, low, high, mayBe));
  }

  private static Optional<Unit> unit(TableRow row, String column, String code) {
    Optional<Unit> unit = Unit.findByCode(code);
    if (unit.isEmpty()) {
      row.problem(column, "unknown-unit", "a unit such as % or mg/kg");
    }
    return unit;
  }

  private static <E extends Enum<E>> Optional<E> constant(E[] all, TableRow row, String column) {
    String text = row.required(column).toUpperCase(Locale.ROOT);
    Optional<E> found = Arrays.stream(all).filter(e -> e.name().equals(text)).findFirst();
    if (found.isEmpty()) {
      row.problem(column, "unknown-word", "one of " + Arrays.toString(all));
    }
    return found;
  }

  private static Optional<Phrase> phrase(TableRow row, List<AnalyteRule> rules) {
    Optional<Kind> kind = constant(Kind.values(), row, "kind");
    String spelling = row.required("spelling");
    String meaning = row.text("meaning");
    if (kind.isEmpty() || spelling.isEmpty()) {
      return Optional.empty();
    }
    if (kind.get() == Kind.ANALYTE
        && rules.stream().noneMatch(r -> r.analyte().code().value().equals(meaning))) {
      row.problem("meaning", "unknown-analyte", "a code of analytes.csv");
      return Optional.empty();
    }
    Optional<Phrase> phrase = Phrase.find(spelling, kind.get(), meaning);
    if (phrase.isEmpty()) {
      row.problem("spelling", "no-word", "at least one letter, digit or %");
    }
    return phrase;
  }
}
