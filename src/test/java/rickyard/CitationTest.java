package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rickyard.docs.CitedMethods;

/** Every formula and every row says where it comes from, and the bibliography knows it. */
class CitationTest {
  private static final CSVFormat TABLE =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private static Set<String> keys() throws IOException {
    try (InputStream in = CitationTest.class.getResourceAsStream("/config/sources.csv");
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), TABLE)) {
      return parser.stream().map(r -> r.get("key")).collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void everyCitedSourceIsARowOfTheBibliography() throws IOException {
    Set<String> known = keys();

    List<String> unknown =
        CitedMethods.all().stream()
            .filter(c -> !known.contains(c.source()))
            .map(CitedMethods.Cited::toString)
            .toList();

    assertEquals(List.of(), unknown);
  }

  @Test
  void everySourceOfEveryTableIsARowOfTheBibliography() throws IOException {
    Set<String> known = keys();
    Set<String> unknown = new TreeSet<>();
    try (Stream<Path> tables = Files.walk(Path.of("config"))) {
      for (Path table : tables.filter(p -> p.toString().endsWith(".csv")).sorted().toList()) {
        if (table.endsWith("sources.csv")) {
          continue;
        }
        try (CSVParser parser =
            CSVParser.parse(
                new StringReader(Files.readString(table, StandardCharsets.UTF_8)), TABLE)) {
          for (CSVRecord row : parser) {
            if (!known.contains(row.get("source"))) {
              unknown.add(table + ": " + row.get("source"));
            }
          }
        }
      }
    }

    assertEquals(Set.of(), unknown);
  }
}
