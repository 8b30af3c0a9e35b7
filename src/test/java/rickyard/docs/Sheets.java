package rickyard.docs;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The tables of {@code config/} as they lie in the source tree. */
final class Sheets {
  private static final Path CONFIG = Path.of("config");
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private Sheets() {}

  /** Every table but the bibliography, by its name below config/, in order. */
  static Map<String, List<CSVRecord>> all() {
    Map<String, List<CSVRecord>> sheets = new TreeMap<>();
    try (Stream<Path> files = Files.walk(CONFIG)) {
      files
          .filter(p -> p.toString().endsWith(".csv") && !p.endsWith("sources.csv"))
          .forEach(p -> sheets.put(CONFIG.relativize(p).toString().replace('\\', '/'), rows(p)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sheets;
  }

  /** The bibliography by key. */
  static Map<String, CSVRecord> sources() {
    return rows(CONFIG.resolve("sources.csv")).stream()
        .collect(Collectors.toMap(r -> r.get("key"), r -> r, (a, b) -> a, TreeMap::new));
  }

  private static List<CSVRecord> rows(Path file) {
    try (CSVParser parser =
        CSVParser.parse(new StringReader(Files.readString(file, StandardCharsets.UTF_8)), FORMAT)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What each status counts, in the order of the words. */
  static Map<String, Long> byStatus(Stream<String> statuses) {
    return statuses.collect(Collectors.groupingBy(s -> s, TreeMap::new, Collectors.counting()));
  }

  /** {@code memory 4, secondary 4}. */
  static String words(Map<String, Long> byStatus) {
    return byStatus.entrySet().stream()
        .map(e -> e.getKey() + " " + e.getValue())
        .collect(Collectors.joining(", "));
  }

  /** Text for a cell of a table of a page. */
  static String cell(String text) {
    return text.replace("|", "\\|").replace("\n", " ");
  }
}
