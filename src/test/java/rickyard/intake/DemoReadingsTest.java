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
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Measured;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/**
 * Reads every file of the demo's inbox and holds what was read against {@code
 * fixtures/truth/readings.csv}, which the maker of the files wrote while it printed them.
 *
 * <p>A printed pair of as fed and dry matter is one figure here: the reader takes one of the two.
 */
class DemoReadingsTest {
  private static final Path FIXTURES = Path.of("fixtures");

  /** Files whose figures the page itself puts in doubt: here a settled figure need not appear. */
  private static final Set<String> PUT_IN_DOUBT = Set.of("pellowick-26-20590.csv");

  /** Names that a report leaves undefined; they are asked. */
  private static final Set<String> UNDEFINED = Set.of("NSC", "NITRATE");

  private record Figure(String file, String sample, String lot, String analyte) {}

  private static final Map<String, ReadFile> READ = new TreeMap<>();
  private static List<CSVRecord> truth = List.of();

  @BeforeAll
  static void readAll() throws IOException {
    Intake intake =
        new Intake(
            new DocumentReader(),
            new Interpreter(DictionaryTables.load(Optional.empty())),
            ReadLimits.DEFAULT);
    try (var files = Files.list(FIXTURES.resolve("office/inbox"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        READ.put(name, intake.read(Files.readAllBytes(file), name));
      }
    }
    truth = rows("readings.csv");
  }

  private static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(FIXTURES.resolve("truth/" + name)), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Report> reports(String file) {
    return READ.get(file).documents().stream().flatMap(d -> d.report().stream()).toList();
  }

  private static Optional<Sample> sample(String file, String labNo, String lot) {
    List<Sample> samples = reports(file).stream().flatMap(r -> r.samples().stream()).toList();
    return samples.stream()
        .filter(s -> s.labNo().equals(labNo) || s.label().equals(labNo) || s.label().equals(lot))
        .findFirst()
        .or(() -> samples.size() == 1 ? Optional.of(samples.get(0)) : Optional.empty());
  }

  private static Map<Figure, List<CSVRecord>> figures() {
    Map<Figure, List<CSVRecord>> figures = new java.util.LinkedHashMap<>();
    for (CSVRecord row : truth) {
      Figure figure =
          new Figure(row.get("file"), row.get("sample"), row.get("lot"), row.get("analyte"));
      figures.computeIfAbsent(figure, f -> new ArrayList<>()).add(row);
    }
    return figures;
  }

  private static boolean is(Reading reading, CSVRecord row) {
    Measured value = reading.value().orElseThrow();
    double expected = Double.parseDouble(row.get("value_canonical"));
    if (row.get("analyte").equals("ERGOVALINE")) {
      expected /= 1000; // printed in ug/kg, kept in mg/kg
    }
    boolean censored = row.get("censored").equals("<");
    double read = censored ? value.upper() : value.best();
    return Math.abs(read - expected) <= 1e-5 * Math.max(1, Math.abs(expected))
        && value.isBoundedAbove()
        && reading.rawBasis().equals(row.get("basis"));
  }

  @Test
  void everyFigureOfTheWellFormedReportsIsRead() {
    List<String> misses = new ArrayList<>();
    Map<Figure, List<CSVRecord>> figures = figures();
    int wanted = 0;
    for (Figure figure : figures.keySet()) {
      if (PUT_IN_DOUBT.contains(figure.file()) || UNDEFINED.contains(figure.analyte())) {
        continue;
      }
      wanted++;
      Optional<Reading> reading =
          sample(figure.file(), figure.sample(), figure.lot()).stream()
              .flatMap(s -> s.readings().stream())
              .filter(r -> r.analyte().value().equals(figure.analyte()))
              .findFirst();
      if (reading.filter(Reading::isSettled).isEmpty()) {
        misses.add(figure + " " + reading.map(Reading::doubt).orElse("not found"));
      }
    }
    double share = 1 - (double) misses.size() / wanted;
    assertTrue(share >= 0.98, () -> String.join("\n", misses));
  }

  @Test
  void noSettledFigureDiffersFromThePrintedOne() {
    Map<Figure, List<CSVRecord>> figures = figures();
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<Figure, List<CSVRecord>> entry : figures.entrySet()) {
      Figure figure = entry.getKey();
      sample(figure.file(), figure.sample(), figure.lot()).stream()
          .flatMap(s -> s.readings().stream())
          .filter(r -> r.isSettled() && r.analyte().value().equals(figure.analyte()))
          .filter(r -> entry.getValue().stream().noneMatch(row -> is(r, row)))
          .forEach(r -> wrong.add(figure + " read as " + r.value().orElseThrow()));
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void nothingIsReadThatIsNotPrintedAsAResult() {
    Set<String> printed = new java.util.TreeSet<>();
    truth.forEach(r -> printed.add(r.get("file") + " " + r.get("analyte")));
    List<String> extra = new ArrayList<>();
    READ.keySet().stream()
        .filter(f -> !f.equals("scan2mail-copy.csv"))
        .forEach(
            file ->
                reports(file).stream()
                    .flatMap(r -> r.samples().stream())
                    .flatMap(s -> s.readings().stream())
                    .filter(r -> r.isSettled() && !printed.contains(file + " " + r.analyte()))
                    .forEach(r -> extra.add(file + " " + r.analyte() + " " + r.raw())));
    assertEquals(List.of(), extra);
  }

  @Test
  void everyReportAndSampleIsNamedAsPrinted() {
    List<String> wrong = new ArrayList<>();
    for (CSVRecord row : rows("reports.csv")) {
      String file = row.get("file");
      Optional<Report> report = reports(file).stream().findFirst();
      if (report.isEmpty()) {
        continue;
      }
      check(row, "report_no", report.get().reportNo(), wrong);
      check(row, "status", report.get().status().code(), wrong);
      check(row, "reported_on", report.get().reportedOn().map(Object::toString).orElse(""), wrong);
      Sample sample = sample(file, row.get("sample"), row.get("lot")).orElseThrow();
      check(row, "lot", sample.label(), wrong);
      check(row, "material", sample.material(), wrong);
      check(row, "sampled_on", sample.sampledOn().map(Object::toString).orElse(""), wrong);
    }
    assertEquals(List.of(), wrong);
  }

  private static void check(CSVRecord row, String column, String read, List<String> wrong) {
    String printed = row.get(column).replaceFirst("(..)[.](..)[.](....)", "$3-$2-$1");
    boolean german = column.equals("material") && read.startsWith("Heu");
    if (!printed.equals(read) && !german) {
      wrong.add(row.get("file") + " " + column + ": " + printed + " read as " + read);
    }
  }
}
