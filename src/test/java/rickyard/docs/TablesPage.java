package rickyard.docs;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/**
 * {@code docs/tables.md}: every table with what its rows rest on, and every source with its use.
 */
final class TablesPage {
  /** Words to read reports with; they hold no figure that a diet or a verdict rests on. */
  private static final Set<String> DICTIONARY =
      Set.of(
          "analytes.csv", "feed-analytes.csv", "layouts.csv", "sample-kinds.csv", "spellings.csv");

  private final Map<String, List<CSVRecord>> sheets = Sheets.all();

  String text() {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Tables

        The tables under `config/`, with how many of their rows rest on what; written by `GeneratedDocsTest` (see DEVELOPERS.md). `verified` was read in the source; `secondary` was read in a text that quotes it; `memory` was recalled and must be checked by a person with the book; `common-practice` is a fact of the trade without a source; `assumed` is our own choice, printed where it is used.

        | table | rows | by status |
        |---|---|---|
        """);
    sheets.forEach((name, rows) -> page.append(line(name, rows)));
    page.append('\n').append(total()).append("\n\n## Sources\n\n");
    page.append("Every row of `config/sources.csv`, with the tables that name it.\n\n");
    page.append("| key | source | status | rows | tables |\n|---|---|---|---|---|\n");
    Sheets.sources().forEach((key, row) -> page.append(source(key, row)));
    return page.toString();
  }

  private static String line(String name, List<CSVRecord> rows) {
    String counts =
        rows.isEmpty()
            ? "none built in: an office adds its own"
            : Sheets.words(Sheets.byStatus(rows.stream().map(r -> r.get("status"))));
    return "| `" + name + "` | " + rows.size() + " | " + counts + " |\n";
  }

  private Map<String, Long> numbers() {
    return Sheets.byStatus(
        sheets.entrySet().stream()
            .filter(e -> !DICTIONARY.contains(e.getKey()))
            .flatMap(e -> e.getValue().stream())
            .map(r -> r.get("status")));
  }

  private String total() {
    Map<String, Long> numbers = numbers();
    return "Of the "
        + sum(numbers)
        + " rows of numbers and rules (dictionary apart) "
        + count(numbers, "verified")
        + " are verified, "
        + count(numbers, "secondary")
        + " secondary, "
        + count(numbers, "memory")
        + " from memory, "
        + count(numbers, "common-practice")
        + " common practice and "
        + count(numbers, "assumed")
        + " assumed.";
  }

  /** The sentence of README. */
  String share() {
    Map<String, Long> numbers = numbers();
    return "Of the "
        + sum(numbers)
        + " rows of numbers and rules in them "
        + percent(numbers, "memory")
        + " rest on memory, "
        + percent(numbers, "assumed")
        + " on our own assumptions, "
        + percent(numbers, "secondary")
        + " on texts that quote a source, "
        + percent(numbers, "verified")
        + " on a source that was read and "
        + percent(numbers, "common-practice")
        + " on common practice";
  }

  private static String percent(Map<String, Long> numbers, String status) {
    return Math.round(100.0 * count(numbers, status) / sum(numbers)) + " %";
  }

  private static long sum(Map<String, Long> numbers) {
    return numbers.values().stream().mapToLong(Long::longValue).sum();
  }

  private static long count(Map<String, Long> numbers, String status) {
    return numbers.getOrDefault(status, 0L);
  }

  private String source(String key, CSVRecord row) {
    Map<String, Long> uses = new TreeMap<>();
    sheets.forEach(
        (name, rows) -> {
          long used = rows.stream().filter(r -> r.get("source").equals(key)).count();
          if (used > 0) {
            uses.put(name, used);
          }
        });
    Set<String> names = new TreeSet<>(uses.keySet());
    String tables = names.isEmpty() ? "formulas only" : String.join(", ", names);
    long rows = Stream.of(uses).flatMap(u -> u.values().stream()).mapToLong(Long::longValue).sum();
    return "| "
        + key
        + " | "
        + Sheets.cell(row.get("citation"))
        + " | "
        + row.get("status")
        + " | "
        + rows
        + " | "
        + tables
        + " |\n";
  }
}
