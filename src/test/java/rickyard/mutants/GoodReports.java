package rickyard.mutants;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Measured;
import rickyard.fixtures.RandomReports;
import rickyard.fixtures.RandomReports.Figure;

/**
 * The reports to alter, each held against a truth that no reader made: only a report of which every
 * figure is read, without a question and as the truth has it, is good.
 */
final class GoodReports {
  private static final Path OFFICE = Path.of("fixtures/office/inbox");
  private static final Path OFFICE_TRUTH = Path.of("fixtures/truth/readings.csv");
  private static final Path OTHERS = Path.of("fixtures/laboratories");
  private static final double RELATIVE = 1e-4;

  private final rickyard.mutants.Reader reader;
  private final List<GoodReport> good = new ArrayList<>();
  private final SortedMap<String, String> left = new TreeMap<>();

  GoodReports(rickyard.mutants.Reader reader) {
    this.reader = reader;
  }

  List<GoodReport> good() {
    return List.copyOf(good);
  }

  /** Reports that are not altered, and why. */
  SortedMap<String, String> left() {
    return left;
  }

  void addOffice() throws IOException {
    SortedMap<String, List<Figure>> byFile = new TreeMap<>();
    for (CSVRecord row : rows(OFFICE_TRUTH)) {
      Figure figure =
          new Figure(
              row.get("lot"),
              row.get("sample"),
              row.get("analyte"),
              row.get("basis"),
              Double.parseDouble(row.get("value_canonical"))
                  / (row.get("analyte").equals("ERGOVALINE") ? 1000 : 1));
      byFile.computeIfAbsent(row.get("file"), f -> new ArrayList<>()).add(figure);
    }
    for (String file : byFile.keySet()) {
      add(file, Files.readAllBytes(OFFICE.resolve(file)), byFile.getOrDefault(file, List.of()));
    }
  }

  /** Reports by another hand, where they are there: those that are well formed. */
  void addOthers() throws IOException {
    if (!Files.exists(OTHERS.resolve("truth/files.csv"))) {
      return;
    }
    SortedMap<String, List<Figure>> byFile = new TreeMap<>();
    for (CSVRecord row : rows(OTHERS.resolve("truth/values.csv"))) {
      if (!row.get("value").isBlank()) {
        byFile
            .computeIfAbsent(row.get("file"), f -> new ArrayList<>())
            .add(
                new Figure(
                    row.get("lot"),
                    "",
                    row.get("code"),
                    row.get("raw_basis"),
                    Double.parseDouble(row.get("value").replace("<", ""))));
      }
    }
    for (CSVRecord row : rows(OTHERS.resolve("truth/files.csv"))) {
      Path file = OTHERS.resolve("reports").resolve(row.get("file"));
      if (row.get("well_formed").matches("(?i)yes|true|1") && Files.exists(file)) {
        String name = row.get("file");
        add(name, Files.readAllBytes(file), byFile.getOrDefault(name, List.of()));
      }
    }
  }

  void addRandom(RandomReports random, int count) throws IOException {
    for (int i = 0; i < count; i++) {
      RandomReports.Made made = random.next();
      add(made.name(), made.bytes(), made.figures());
    }
  }

  private void add(String name, byte[] bytes, List<Figure> truth) {
    List<GoodReport> found = reader.reports(name, bytes);
    if (found.isEmpty()) {
      left.put(name, "not read");
    }
    for (GoodReport report : found) {
      String why = why(report, truth);
      if (why.isEmpty()) {
        good.add(report);
      } else {
        left.put(report.name(), why);
      }
    }
  }

  /** Why a report is not one to alter; empty if it is. */
  private static String why(GoodReport report, List<Figure> truth) {
    SortedSet<String> doubts = new TreeSet<>();
    report.report().notes().forEach(n -> doubts.add(n.code()));
    for (Sample sample : report.report().samples()) {
      sample.doubts().forEach(d -> doubts.add(d.code()));
      for (Reading reading : sample.readings()) {
        if (reading.isSettled() && truth.stream().noneMatch(f -> is(f, sample, reading))) {
          return "differs from the truth: " + reading.analyte() + " " + reading.raw();
        }
      }
    }
    return doubts.isEmpty() ? "" : "asks by itself: " + String.join(", ", doubts);
  }

  private static boolean is(Figure figure, Sample sample, Reading reading) {
    if (!figure.analyte().equals(reading.analyte().value())) {
      return false;
    }
    boolean named =
        figure.lot().equals(sample.label())
            || (!figure.sample().isEmpty()
                && (figure.sample().equals(sample.labNo())
                    || figure.sample().equals(sample.label())))
            || figure.lot().endsWith(" " + sample.batch());
    Measured value = reading.value().orElseThrow();
    double read =
        value.low() < value.high() && value.lower() < value.upper() ? value.upper() : value.best();
    double slack = RELATIVE * Math.max(0.01, Math.abs(figure.value()));
    return named && Math.abs(read - figure.value()) <= slack;
  }

  private static List<CSVRecord> rows(Path path) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in = Files.newBufferedReader(path)) {
      return format.parse(in).getRecords();
    }
  }

  /** How many of these reports there are by kind of file. */
  SortedMap<String, Integer> kinds() {
    SortedMap<String, Integer> kinds = new TreeMap<>();
    good.forEach(g -> kinds.merge(g.kind(), 1, Integer::sum));
    return kinds;
  }
}
