package rickyard.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/** A folder of reports with the truth that was written before they were rendered, all read. */
final class LaboratoryFolder {
  /** NO3 printed, NO3-N kept: molar masses 14.0067 and 62.0049. */
  private static final double NO3_PER_N = 4.4268;

  private final Path folder;
  private final double tolerance;
  private final Map<String, ReadFile> read = new TreeMap<>();
  private final Map<String, CSVRecord> files = new TreeMap<>();
  private final List<CSVRecord> values;

  /**
   * Reads a folder.
   *
   * @param tolerance share of a value by which the rounding of an as-fed figure may move it
   */
  LaboratoryFolder(Path folder, double tolerance) throws IOException {
    this.folder = folder;
    this.tolerance = tolerance;
    rows("files.csv").forEach(row -> files.put(row.get("file"), row));
    values = rows("values.csv");
    Intake intake =
        new Intake(
            new DocumentReader(),
            new Interpreter(DictionaryTables.load(Optional.empty())),
            ReadLimits.DEFAULT);
    try (var inbox = Files.list(folder.resolve("reports"))) {
      for (Path file : inbox.sorted().toList()) {
        String name = file.getFileName().toString();
        read.put(name, intake.read(Files.readAllBytes(file), name));
      }
    }
  }

  Map<String, CSVRecord> files() {
    return files;
  }

  List<CSVRecord> values() {
    return values;
  }

  List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(folder.resolve("truth/" + name)), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Report> reports(String file) {
    return read.get(file).documents().stream().flatMap(d -> d.report().stream()).toList();
  }

  Optional<Sample> sample(CSVRecord row) {
    return reports(row.get("file")).stream()
        .flatMap(r -> r.samples().stream())
        .filter(s -> List.of(s.label(), s.batch(), s.labNo()).contains(row.get("lot")))
        .findFirst();
  }

  static Optional<Reading> reading(Sample sample, String code) {
    return sample.readings().stream().filter(r -> r.analyte().value().equals(code)).findFirst();
  }

  static boolean isCoded(CSVRecord row) {
    return row.get("code").equals(row.get("code").toUpperCase(java.util.Locale.ROOT));
  }

  Optional<Reading> found(CSVRecord row) {
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

  boolean isRight(CSVRecord row, Reading reading) {
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
    return Math.abs(read - wanted) <= tolerance * Math.max(1e-9, Math.abs(wanted));
  }

  private double dryMatter(CSVRecord row) {
    Measured value = reading(sample(row).orElseThrow(), "DM").orElseThrow().value().orElseThrow();
    return value.best();
  }
}
