package rickyard.registers;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rickyard.tables.FormulaGuard;
import rickyard.tables.TableProblem;

/** Splits a register's text into cells and holds its header against the register's columns. */
final class RegisterReader {
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

  private final Register register;
  private final Predicate<String> ownNumber;
  private final Findings findings;

  /**
   * A reader of one register.
   *
   * @param ownNumber which columns beyond the register's own hold numbers
   */
  RegisterReader(Register register, Predicate<String> ownNumber, Findings findings) {
    this.register = register;
    this.ownNumber = ownNumber;
    this.findings = findings;
  }

  /** The table, or empty after a fatal problem. */
  Optional<RegisterTable> read(String text) {
    char delimiter = delimiter(text);
    List<RegisterTable.Line> lines;
    try {
      lines = lines(text, delimiter);
    } catch (IOException | UncheckedIOException e) {
      fatal(brokenAt(text), "", "not-csv", "a CSV table with paired quotes", "a quote left open");
      return Optional.empty();
    }
    if (lines.isEmpty()) {
      fatal(0, "", "no-header", "a header row", "an empty file");
      return Optional.empty();
    }
    List<String> header =
        lines.get(0).cells().stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
    List<RegisterTable.Line> rows = lines.subList(1, lines.size());
    if (!headerIsRight(header, lines.get(0).number(), rows)) {
      return Optional.empty();
    }
    return Optional.of(
        new RegisterTable(register.fileName(), header, rows, mark(delimiter, header, rows)));
  }

  /** The delimiter under which most columns of the register are found. */
  char delimiter(String text) {
    char best = ',';
    int most = 0;
    for (char delimiter : DELIMITERS) {
      int known = knownColumns(text, delimiter);
      if (known > most) {
        most = known;
        best = delimiter;
      }
    }
    return best;
  }

  private int knownColumns(String text, char delimiter) {
    Set<String> known = new TreeSet<>(register.columnNames());
    try (CSVParser parser = parser(text, delimiter)) {
      Iterator<CSVRecord> records = parser.iterator();
      while (records.hasNext()) {
        List<String> cells = cells(records.next());
        if (cells.stream().anyMatch(c -> !c.isEmpty())) {
          return (int)
              cells.stream().filter(c -> known.contains(c.toLowerCase(Locale.ROOT))).count();
        }
      }
      return 0;
    } catch (IOException | UncheckedIOException e) {
      return 0;
    }
  }

  private static CSVParser parser(String text, char delimiter) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    return CSVParser.parse(new StringReader(text), format);
  }

  private static List<RegisterTable.Line> lines(String text, char delimiter) throws IOException {
    List<RegisterTable.Line> lines = new ArrayList<>();
    try (CSVParser parser = parser(text, delimiter)) {
      for (CSVRecord found : parser) {
        RegisterTable.Line line =
            new RegisterTable.Line((int) found.getRecordNumber(), cells(found));
        if (!line.isBlank()) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  /** The text of each row as it stands there, blank ones too; all of it where it is no CSV. */
  List<String> records(String text) {
    List<Integer> starts = new ArrayList<>();
    try (CSVParser parser = parser(text, delimiter(text))) {
      parser.forEach(found -> starts.add((int) found.getCharacterPosition()));
    } catch (IOException | UncheckedIOException e) {
      return List.of(text);
    }
    List<String> records = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int end = i + 1 < starts.size() ? starts.get(i + 1) : text.length();
      records.add(text.substring(starts.get(i), end).stripTrailing());
    }
    return records;
  }

  private static List<String> cells(CSVRecord found) {
    return found.stream().map(cell -> FormulaGuard.strip(cell.strip())).toList();
  }

  /** The line in which the last quote of the text stands: where an open one is best looked for. */
  private static int brokenAt(String text) {
    int quote = Math.max(0, text.lastIndexOf('"'));
    return (int) text.substring(0, quote).chars().filter(c -> c == '\n').count() + 1;
  }

  private boolean headerIsRight(List<String> header, int headerRow, List<RegisterTable.Line> rows) {
    boolean right = !hasDuplicates(header, headerRow);
    Set<String> unknown = new TreeSet<>(header);
    unknown.removeAll(register.columnNames());
    unknown.removeIf(ownNumber);
    unknown.remove("");
    for (Register.Column column : register.columns()) {
      right &= columnIsRight(column, header, headerRow, unknown);
    }
    for (String name : unknown) {
      findings.warn(
          new TableProblem(
              register.fileName(),
              headerRow,
              name,
              "unknown-column",
              "a known column (nearest: "
                  + Nearest.of(name, register.columnNames()).orElse("none")
                  + "); kept, not used",
              name));
    }
    warnOfNamelessCells(header, rows);
    return right;
  }

  private boolean hasDuplicates(List<String> header, int headerRow) {
    Set<String> seen = new TreeSet<>();
    boolean duplicates = false;
    for (String name : header) {
      if (!name.isEmpty() && !seen.add(name)) {
        fatal(headerRow, name, "duplicate-column", "each column once", name + " twice");
        duplicates = true;
      }
    }
    return duplicates;
  }

  private boolean columnIsRight(
      Register.Column column, List<String> header, int headerRow, Set<String> unknown) {
    List<String> there = column.names().stream().filter(header::contains).toList();
    String name = column.names().get(0);
    if (there.size() > 1) {
      fatal(
          headerRow,
          there.get(1),
          "two-units",
          "only one of " + String.join(" and ", there),
          "both");
      return false;
    }
    if (!there.isEmpty()) {
      return true;
    }
    Optional<String> meant = Nearest.within(2, name, unknown);
    if (column.required() || meant.isPresent()) {
      fatal(
          headerRow,
          name,
          "missing-column",
          column.expected(),
          meant.map(m -> "none (nearest: " + m + ")").orElse("none"));
      return false;
    }
    if (column.silent()) {
      return true;
    }
    findings.warn(
        new TableProblem(
            register.fileName(),
            headerRow,
            name,
            "absent-column",
            column.expected() + "; taken as blank",
            "none"));
    return true;
  }

  private void warnOfNamelessCells(List<String> header, List<RegisterTable.Line> rows) {
    for (RegisterTable.Line row : rows) {
      for (int i = 0; i < Math.min(header.size(), row.cells().size()); i++) {
        if (header.get(i).isEmpty() && !row.cells().get(i).isEmpty()) {
          findings.warn(
              new TableProblem(
                  register.fileName(),
                  row.number(),
                  "",
                  "nameless-column",
                  "a heading over every filled column; the cell is not used",
                  row.cells().get(i)));
          return;
        }
      }
    }
  }

  private DecimalMark mark(char delimiter, List<String> header, List<RegisterTable.Line> rows) {
    if (delimiter == ',') {
      return DecimalMark.POINT;
    }
    Set<String> numbers = new TreeSet<>();
    register.columns().stream()
        .filter(Register.Column::number)
        .forEach(column -> numbers.addAll(column.names()));
    List<Integer> positions =
        Stream.iterate(0, i -> i < header.size(), i -> i + 1)
            .filter(i -> numbers.contains(header.get(i)) || ownNumber.test(header.get(i)))
            .toList();
    return DecimalMark.of(
        rows.stream()
            .flatMap(
                row ->
                    positions.stream()
                        .filter(i -> i < row.cells().size())
                        .map(i -> row.cells().get(i))));
  }

  private void fatal(int row, String column, String code, String expected, String found) {
    findings.fatal(new TableProblem(register.fileName(), row, column, code, expected, found));
  }
}
