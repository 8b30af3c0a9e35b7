package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.core.quantity.Unit;

/**
 * Holds analyses.csv of the demo's morning against figures that a person read off pictures of the
 * pages, without the program and without the data that made the pages.
 */
class PageValuesReferenceTest {
  private static final CSVFormat TABLE =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();
  private static final double RELATIVE = 1e-6;

  @TempDir Path folder;

  private static List<CSVRecord> pageValues() throws IOException {
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                PageValuesReferenceTest.class.getResourceAsStream("/reference/page-values.csv"),
                StandardCharsets.UTF_8),
            TABLE)) {
      return parser.getRecords();
    }
  }

  private Map<String, CSVRecord> analyses() throws IOException {
    Path office = folder.resolve("office");
    Path demo = Path.of("fixtures", "office");
    BuiltJar.copy(demo, office);
    LocalDate day = LocalDate.of(2026, 3, 16);
    MorningEnd end =
        new Morning(
                SmallOffice.folders(office),
                new Options("kg", new TreeSet<>(List.of("data"))),
                2,
                Progress.silent(),
                ledger -> {})
            .run(Optional.of(day), day);
    Map<String, CSVRecord> rows = new HashMap<>();
    try (CSVParser parser =
        CSVParser.parse(end.out().resolve("analyses.csv"), StandardCharsets.UTF_8, TABLE)) {
      for (CSVRecord row : parser) {
        String basis = row.get("raw_basis").isEmpty() ? row.get("basis") : row.get("raw_basis");
        if (!row.get("raw").isEmpty()) {
          String lot = (row.get("lot") + " " + row.get("batch")).strip();
          rows.put(key(row.get("file"), lot, row.get("analyte"), basis), row);
        }
      }
    }
    return rows;
  }

  private static String key(String file, String lot, String analyte, String basis) {
    return String.join("|", file, lot, analyte, basis);
  }

  @Test
  void everyFigureTakenIsTheOneThatStandsOnThePage() throws IOException {
    Map<String, CSVRecord> taken = analyses();
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (CSVRecord seen : pageValues()) {
      String basis = seen.get("basis").isEmpty() ? "none" : seen.get("basis");
      CSVRecord row =
          taken.get(key(seen.get("file"), seen.get("sample"), seen.get("analyte"), basis));
      if (row == null) {
        continue;
      }
      compared++;
      if (!agrees(seen, row)) {
        wrong.add(seen + " against " + row);
      }
    }

    assertEquals(List.of(), wrong);
    assertTrue(compared >= 500, "only " + compared + " figures compared");
  }

  private static boolean agrees(CSVRecord seen, CSVRecord row) {
    String printed = seen.get("printed").replace(',', '.');
    if (printed.startsWith("<")) {
      return row.get("raw").replace(',', '.').startsWith("<")
          && Math.abs(Double.parseDouble(row.get("high")) - number(printed, seen, row))
              <= RELATIVE * number(printed, seen, row);
    }
    double expected = number(printed, seen, row);
    return Math.abs(Double.parseDouble(row.get("value")) - expected)
        <= RELATIVE * Math.max(1, Math.abs(expected));
  }

  /** The printed number in the unit of analyses.csv. */
  private static double number(String printed, CSVRecord seen, CSVRecord row) {
    double number = Double.parseDouble(printed.replace("<", "").strip());
    Unit to = Unit.findByCode(row.get("unit")).orElseThrow();
    return unit(seen.get("unit"), to).convert(number, to);
  }

  private static Unit unit(String text, Unit otherwise) {
    return switch (text) {
      case "" -> otherwise;
      case "ppm" -> Unit.MG_PER_KG;
      default -> Unit.findByCode(text).orElseThrow();
    };
  }
}
