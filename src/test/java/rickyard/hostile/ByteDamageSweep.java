package rickyard.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.intake.Intake;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/**
 * Good reports with bytes changed, cut or doubled: no settled figure may differ from what the
 * undamaged file says, except where the damage hit the figure's own digits in a format that has no
 * check sum; those are counted apart. Run by {@code -P hostile}; figures in {@code
 * target/byte-damage.txt}.
 */
class ByteDamageSweep {
  private static final Path INBOX = Path.of("fixtures", "office", "inbox");
  private static final int PER_FILE = Integer.getInteger("rickyard.damages", 160);

  private final Intake intake =
      new Intake(
          new DocumentReader(),
          new Interpreter(DictionaryTables.load(Optional.empty())),
          ReadLimits.DEFAULT);
  private final Map<String, Integer> counts = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();
  private final List<String> own = new ArrayList<>();
  private final List<CSVRecord> figures;

  ByteDamageSweep() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader text = Files.newBufferedReader(Path.of("fixtures", "truth", "readings.csv"))) {
      figures = format.parse(text).getRecords();
    }
  }

  @Test
  void noDamagedFileGivesAnotherFigure() throws IOException {
    int files = 0;
    for (Path paper : papers()) {
      String name = paper.getFileName().toString();
      byte[] whole = Files.readAllBytes(paper);
      List<Sample> truth = samples(intake.read(whole, name));
      if (truth.stream().mapToLong(s -> settled(s).size()).sum() == 0) {
        continue;
      }
      Random random = new Random(name.hashCode());
      for (int each = 0; each < PER_FILE; each++) {
        List<Damage> kinds = List.of(Damage.values());
        Damage damage = kinds.get(each % kinds.size());
        byte[] damaged = damage.done(whole, random);
        check(name, damage + " " + each, truth, intake.read(damaged, name));
        files++;
      }
    }
    Files.writeString(
        Path.of("target", "byte-damage.txt"),
        files + " files\n" + counts + "\n" + lines("wrong", wrong) + lines("own digits", own));
    assertEquals(List.of(), wrong);
    assertTrue(counts.getOrDefault("csv: same figures only", 0) > 0, "nothing was read at all");
  }

  private static List<Path> papers() throws IOException {
    try (Stream<Path> files = Files.list(INBOX)) {
      return files.filter(f -> f.toFile().length() > 0).sorted().toList();
    }
  }

  /** Samples of reports that nothing holds back as a whole. */
  private static List<Sample> samples(ReadFile file) {
    return file.documents().stream()
        .flatMap(d -> d.report().stream())
        .filter(r -> r.notes().isEmpty())
        .flatMap(r -> r.samples().stream())
        .toList();
  }

  private static List<Reading> settled(Sample sample) {
    return sample.readings().stream().filter(Reading::isSettled).toList();
  }

  private void check(String file, String damage, List<Sample> truth, ReadFile read) {
    String ending = file.substring(file.lastIndexOf('.') + 1);
    List<Sample> samples = samples(read);
    boolean same = true;
    for (Sample sample : samples) {
      for (Reading reading : settled(sample)) {
        List<String> printed = printed(file, truth, sample, reading);
        if (printed.stream().noneMatch(p -> isAlike(p, reading))) {
          same = false;
          String what = sample.label() + " " + reading.analyte() + " read " + shown(reading);
          differs(file, file + ", " + damage + ": " + what + ", is " + printed, truth, reading);
        }
      }
    }
    count(ending, samples.isEmpty() ? "no report" : same ? "same figures only" : "other figure");
  }

  /** What the undamaged file prints for the analyte: of that lot, of any where the lot is new. */
  private List<String> printed(String file, List<Sample> truth, Sample sample, Reading reading) {
    boolean known = truth.stream().anyMatch(t -> t.label().equals(sample.label()));
    List<String> all = new ArrayList<>();
    truth.stream()
        .filter(t -> !known || t.label().equals(sample.label()))
        .flatMap(t -> t.readings().stream())
        .filter(r -> r.analyte().equals(reading.analyte()))
        .forEach(r -> r.value().ifPresent(v -> all.add(r.raw() + "=" + v.best())));
    for (CSVRecord row : figures) {
      boolean here = row.get("file").equals(file);
      boolean lot = !known || row.get("lot").equals(sample.label());
      boolean name = reading.analyte().value().startsWith(row.get("analyte"));
      if (here && name && (lot || row.get("sample").equals(sample.label()))) {
        all.add(row.get("printed") + "=" + row.get("value_canonical"));
      }
    }
    return all;
  }

  private static boolean isAlike(String printed, Reading reading) {
    double known = Double.parseDouble(printed.substring(printed.lastIndexOf('=') + 1));
    var value = reading.value().orElseThrow();
    return Math.abs(known - value.best()) <= 1e-5 * Math.max(1, known)
        || Math.abs(known - value.upper()) <= 1e-5 * Math.max(1, known);
  }

  private static String shown(Reading reading) {
    var value = reading.value().orElseThrow();
    return reading.raw() + " = " + value.best() + " " + value.unit() + " " + value.basis();
  }

  /** Whether the figure's own digits were hit: the undamaged file prints no such figure at all. */
  private void differs(String file, String what, List<Sample> truth, Reading reading) {
    boolean checked = file.endsWith(".zip") || file.endsWith(".xlsx");
    String read = digits(reading.raw());
    boolean elsewhere =
        truth.stream()
                .flatMap(s -> s.readings().stream())
                .anyMatch(r -> digits(r.raw()).equals(read))
            || figures.stream()
                .filter(row -> row.get("file").equals(file))
                .anyMatch(row -> digits(row.get("printed")).equals(read));
    if (elsewhere || checked) {
      wrong.add(what);
    } else {
      own.add(what);
    }
  }

  private static String digits(String raw) {
    return raw.replaceAll("[^0-9.,]", "");
  }

  private static String lines(String title, List<String> lines) {
    return title + ": " + lines.size() + "\n" + String.join("\n", lines) + "\n";
  }

  private void count(String ending, String what) {
    counts.merge(ending + ": " + what, 1, Integer::sum);
  }
}
