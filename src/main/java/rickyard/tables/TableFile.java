package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One table of {@code config/}: UTF-8 CSV with comma, lines that start with {@code #} are comments;
 * a comment {@code # version: N} gives its version.
 *
 * <p>The built-in table comes from the class path. A file of the same name in the office's own
 * {@code config/} overrides it row by key; a row there with {@code status} {@code off} removes the
 * built-in row. Unknown or missing columns, duplicate keys and blank sources are problems.
 */
public final class TableFile {
  private final String name;
  private final String version;
  private final String digest;
  private final List<TableRow> rows;
  private final List<TableProblem> problems;

  private TableFile(
      String name,
      String version,
      String digest,
      List<TableRow> rows,
      List<TableProblem> problems) {
    this.name = name;
    this.version = version;
    this.digest = digest;
    this.rows = rows;
    this.problems = problems;
  }

  /**
   * Loads a built-in table and the office's overrides.
   *
   * @param name file name below config/, for example {@code limits.csv} or {@code
   *     requirements-2007/energy.csv}
   * @param columns all columns that the table has, in any order; {@code source} and {@code status}
   *     must be among them
   * @param keys the columns that together name a row
   * @param officeConfig the office's config folder, if there is one
   */
  public static TableFile load(
      String name, List<String> columns, List<String> keys, Optional<Path> officeConfig) {
    requireNonNull(name, "name");
    List<TableProblem> problems = new ArrayList<>();
    String builtIn = resource(name);
    Map<List<String>, TableRow> byKey = new LinkedHashMap<>();
    read(name, builtIn, columns, keys, false, problems, byKey);
    String text = builtIn;
    Optional<String> own = officeConfig.map(folder -> folder.resolve(name)).flatMap(TableFile::own);
    if (own.isPresent()) {
      Map<List<String>, TableRow> overrides = new LinkedHashMap<>();
      read(name, own.get(), columns, keys, true, problems, overrides);
      overrides.forEach(
          (key, row) -> {
            if ("off".equals(row.text("status"))) {
              byKey.remove(key);
            } else {
              byKey.put(key, row);
            }
          });
      text = builtIn + "\u0000" + own.get();
    }
    return new TableFile(
        name, version(builtIn), sha256(text), List.copyOf(byKey.values()), problems);
  }

  private static Optional<String> own(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = TableFile.class.getResourceAsStream("/config/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no built-in table " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void read(
      String name,
      String text,
      List<String> columns,
      List<String> keys,
      boolean office,
      List<TableProblem> problems,
      Map<List<String>, TableRow> into) {
    String file = office ? "office config/" + name : name;
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .setIgnoreEmptyLines(true)
            .get();
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    try (CSVParser parser = CSVParser.parse(new StringReader(body), format)) {
      if (!headerIsRight(file, parser.getHeaderNames(), columns, problems)) {
        return;
      }
      for (CSVRecord found : parser) {
        int line = (int) parser.getCurrentLineNumber();
        if (found.size() != parser.getHeaderNames().size()) {
          problems.add(
              new TableProblem(
                  file,
                  line,
                  "",
                  "cell-count",
                  parser.getHeaderNames().size() + " cells",
                  found.size() + " cells"));
          continue;
        }
        TableRow row = new TableRow(file, line, found.toMap(), office, problems);
        List<String> key = keys.stream().map(row::text).toList();
        if (row.text("source").isEmpty() && !"off".equals(row.text("status"))) {
          row.problem("source", "no-source", "a source");
        }
        if (into.put(key, row) != null) {
          row.problem(keys.get(0), "duplicate-key", "a key used once: " + String.join(" ", key));
        }
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      problems.add(
          new TableProblem(file, 0, "", "not-csv", "a CSV table", String.valueOf(e.getMessage())));
    }
  }

  private static boolean headerIsRight(
      String file, List<String> found, List<String> columns, List<TableProblem> problems) {
    Set<String> missing = new TreeSet<>(columns);
    missing.removeAll(found);
    Set<String> unknown = new TreeSet<>(found);
    unknown.removeAll(columns);
    missing.forEach(
        c -> problems.add(new TableProblem(file, 0, c, "missing-column", "column " + c, "none")));
    unknown.forEach(
        c -> problems.add(new TableProblem(file, 0, c, "unknown-column", "no such column", c)));
    return missing.isEmpty();
  }

  private static String version(String text) {
    return text.lines()
        .filter(line -> line.startsWith("# version:"))
        .map(line -> line.substring("# version:".length()).strip())
        .findFirst()
        .orElse("unversioned");
  }

  private static String sha256(String text) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  public String name() {
    return name;
  }

  /** The built-in table's version as its header comment gives it. */
  public String version() {
    return version;
  }

  /** SHA-256 of the built-in table and the office's overrides together. */
  public String digest() {
    return digest;
  }

  public List<TableRow> rows() {
    return rows;
  }

  /** Notes a problem with the table as a whole, or with one of its rows. */
  void problem(int row, String column, String code, String expected) {
    problems.add(new TableProblem(name, row, column, code, expected, ""));
  }

  /** All problems so far; a loader that takes cells from the rows adds to them. */
  public List<TableProblem> problems() {
    return List.copyOf(problems);
  }
}
