package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
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
import rickyard.core.quantity.Cites;

/** Every formula says where it comes from, and the page of formulas lists exactly these. */
class CitationTest {
  private static final CSVFormat TABLE =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private record Cited(String method, String source, String locator) {}

  private static List<Cited> cited() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("rickyard")
            .stream()
            .flatMap(c -> c.getMethods().stream())
            .flatMap(CitationTest::of)
            .distinct()
            .sorted(java.util.Comparator.comparing(Cited::toString))
            .toList();
  }

  private static Stream<Cited> of(JavaMethod method) {
    JavaClass owner = method.getOwner();
    String name = owner.getName().replaceFirst("^rickyard\\.", "") + "." + method.getName();
    Stream<Cites> one =
        method.isAnnotatedWith(Cites.class)
            ? Stream.of(method.getAnnotationOfType(Cites.class))
            : Stream.empty();
    Stream<Cites> several =
        method.isAnnotatedWith(Cites.List.class)
            ? Stream.of(method.getAnnotationOfType(Cites.List.class).value())
            : Stream.empty();
    return Stream.concat(one, several).map(c -> new Cited(name, c.source(), c.locator()));
  }

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
        cited().stream().filter(c -> !known.contains(c.source())).map(Cited::toString).toList();

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

  @Test
  void thePageOfFormulasListsExactlyTheCitedMethods() throws IOException {
    String expected =
        cited().stream()
            .map(c -> "| `" + c.method() + "` | " + c.source() + " | " + c.locator() + " |")
            .collect(Collectors.joining("\n"));
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target", "formulas.txt"), expected + "\n");
    String page = Files.readString(Path.of("docs", "formulas.md"), StandardCharsets.UTF_8);

    assertTrue(
        page.contains("\n" + expected + "\n"),
        "docs/formulas.md must hold the rows of target/formulas.txt, in their order");
  }
}
