package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/**
 * Reads {@code fixtures/laboratories}: reports in layouts that the reader's authors did not lay
 * out, by somebody who has not seen the reader. The truth was written before the files were
 * rendered.
 */
class LaboratoryReportsTest {
  private static final Path FOLDER = Path.of("fixtures/laboratories");

  /** NO3 printed, NO3-N kept: molar masses 14.0067 and 62.0049. */
  private static final double NO3_PER_N = 4.4268;

  private static final double TOLERANCE = 2e-3;
  private static final Map<String, ReadFile> READ = new TreeMap<>();
  private static final Map<String, CSVRecord> FILES = new TreeMap<>();
  private static List<CSVRecord> values = List.of();

  @BeforeAll
  static void readAll() throws IOException {
    Intake intake =
        new Intake(
            new DocumentReader(),
            new Interpreter(DictionaryTables.load(Optional.empty())),
            ReadLimits.DEFAULT);
    rows("files.csv").forEach(row -> FILES.put(row.get("file"), row));
    values = rows("values.csv");
    try (var files = Files.list(FOLDER.resolve("reports"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        READ.put(name, intake.read(Files.readAllBytes(file), name));
      }
    }
  }

  private static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(FOLDER.resolve("truth/" + name)), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Report> reports(String file) {
    return READ.get(file).documents().stream().flatMap(d -> d.report().stream()).toList();
  }

  private static Optional<Sample> sample(CSVRecord row) {
    return reports(row.get("file")).stream()
        .flatMap(r -> r.samples().stream())
        .filter(s -> s.label().equals(row.get("lot")) || s.batch().equals(row.get("lot")))
        .findFirst();
  }

  private static Optional<Reading> reading(Sample sample, String code) {
    return sample.readings().stream().filter(r -> r.analyte().value().equals(code)).findFirst();
  }

  private static boolean isCoded(CSVRecord row) {
    return row.get("code").equals(row.get("code").toUpperCase(java.util.Locale.ROOT));
  }

  /** The figures of well-formed reports that the reader did not settle, with the reason. */
  private static List<String> misses() {
    List<String> misses = new ArrayList<>();
    for (CSVRecord row : values) {
      if (isCoded(row) && FILES.get(row.get("file")).get("well_formed").equals("yes")) {
        Optional<Reading> found = found(row);
        if (found.filter(Reading::isSettled).isEmpty()) {
          misses.add(
              String.join(" | ", row.get("file"), row.get("lot"), row.get("code"), row.get("raw"))
                  + " | "
                  + found.map(Reading::doubt).orElse("not read"));
        }
      }
    }
    return misses;
  }

  private static Optional<Reading> found(CSVRecord row) {
    return sample(row)
        .flatMap(
            s ->
                reading(s, row.get("code"))
                    .or(
                        () ->
                            row.get("code").equals("NO3_N")
                                ? reading(s, "NO3")
                                : Optional.empty()));
  }

  private static boolean isRight(CSVRecord row, Reading reading) {
    Measured value = reading.value().orElseThrow();
    String expected = row.get("value");
    boolean censored = expected.startsWith("<");
    double wanted = Double.parseDouble(censored ? expected.substring(1) : expected);
    double read = censored ? value.upper() : value.best();
    if (reading.analyte().value().equals("NO3")) {
      read /= NO3_PER_N;
    }
    boolean water = Set.of("DM", "MOISTURE").contains(row.get("code"));
    if (value.basis() == Basis.AS_FED && !water) {
      read *= 100 / dryMatter(row);
    }
    return Math.abs(read - wanted) <= TOLERANCE * Math.max(1e-9, Math.abs(wanted));
  }

  private static double dryMatter(CSVRecord row) {
    Measured value = reading(sample(row).orElseThrow(), "DM").orElseThrow().value().orElseThrow();
    return value.best();
  }

  @Test
  void noSettledFigureDiffersFromThePrintedOne() {
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (CSVRecord row : values) {
      Optional<Reading> found = isCoded(row) ? found(row) : Optional.empty();
      if (found.filter(Reading::isSettled).isPresent()) {
        compared++;
        if (!isRight(row, found.get())) {
          wrong.add(row.toMap() + " read " + found.get());
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(compared > 2500, "compared " + compared);
  }

  @Test
  void whatIsNoFigureBecomesNone() {
    List<String> taken = new ArrayList<>();
    for (CSVRecord row : rows("not-values.csv")) {
      Optional<Reading> found =
          sample(row).flatMap(s -> reading(s, row.get("code"))).filter(Reading::isSettled);
      found.filter(r -> !isBound(r)).ifPresent(r -> taken.add(row.toMap() + " read " + r));
    }
    assertEquals(List.of(), taken);
  }

  /** 'nd' with a limit of detection that the report states is an upper bound, no invention. */
  private static boolean isBound(Reading reading) {
    return reading.value().filter(v -> v.lower() == 0 && v.upper() > 0).isPresent();
  }

  @Test
  void nearlyEveryFigureOfTheWellFormedReportsIsRead() {
    List<String> misses = misses();
    long wanted =
        values.stream()
            .filter(r -> isCoded(r) && FILES.get(r.get("file")).get("well_formed").equals("yes"))
            .count();
    double share = 1 - misses.size() / (double) wanted;
    assertTrue(
        share >= 0.98, () -> misses.size() + " of " + wanted + ":\n" + String.join("\n", misses));
  }

  @Test
  void hardlyAnyWellFormedReportIsAskedAbout() {
    Set<String> asked = new TreeSet<>();
    long wellFormed =
        FILES.values().stream().filter(f -> f.get("well_formed").equals("yes")).count();
    for (CSVRecord file : FILES.values()) {
      if (file.get("well_formed").equals("yes") && isAsked(file.get("file"))) {
        asked.add(file.get("file"));
      }
    }
    assertTrue(asked.size() <= 0.05 * wellFormed, () -> asked + " of " + wellFormed);
  }

  private static boolean isAsked(String file) {
    List<Report> reports = reports(file);
    return reports.isEmpty()
        || reports.stream().anyMatch(r -> !r.notes().isEmpty())
        || reports.stream()
            .flatMap(r -> r.samples().stream())
            .anyMatch(s -> !s.doubts().isEmpty() || (s.label().isEmpty() && s.batch().isEmpty()));
  }

  /** Each is deficient in one way; two columns without heads are told apart by DM % itself. */
  @Test
  void everyDeficientReportIsAskedAboutOrRefused() {
    Set<String> accepted = new TreeSet<>();
    for (CSVRecord file : FILES.values()) {
      if (file.get("well_formed").equals("no") && !isAsked(file.get("file"))) {
        accepted.add(file.get("file"));
      }
    }
    assertEquals(Set.of("weighbridge lab note 14.pdf"), accepted);
  }
}
