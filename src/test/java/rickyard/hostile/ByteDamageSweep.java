package rickyard.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
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
        Damage damage = Damage.values()[each % Damage.values().length];
        byte[] damaged = damage.done(whole, random);
        check(name, damage + " " + each, truth, intake.read(damaged, name));
        files++;
      }
    }
    Files.writeString(
        Path.of("target", "byte-damage.txt"),
        files + " files\n" + counts + "\n" + String.join("\n", wrong) + "\n");
    assertEquals(List.of(), wrong);
    assertTrue(counts.getOrDefault("csv: same figures only", 0) > 0, "nothing was read at all");
  }

  private static List<Path> papers() throws IOException {
    try (Stream<Path> files = Files.list(INBOX)) {
      return files.filter(f -> f.toFile().length() > 0).sorted().toList();
    }
  }

  private static List<Sample> samples(ReadFile file) {
    return file.documents().stream()
        .flatMap(d -> d.report().stream())
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
        Optional<String> other = other(truth, sample, reading);
        if (other.isPresent()) {
          same = false;
          differs(ending, file + ", " + damage + ": " + other.get(), truth, reading);
        }
      }
    }
    count(ending, samples.isEmpty() ? "no report" : same ? "same figures only" : "other figure");
  }

  /** Where the undamaged file says nothing like it for that analyte. */
  private static Optional<String> other(List<Sample> truth, Sample sample, Reading reading) {
    List<Reading> known =
        truth.stream()
            .filter(t -> truth.size() == 1 || t.label().equals(sample.label()))
            .flatMap(t -> settled(t).stream())
            .filter(r -> r.analyte().equals(reading.analyte()))
            .toList();
    return known.stream().anyMatch(r -> alike(r, reading))
        ? Optional.empty()
        : Optional.of(
            sample.label()
                + " "
                + reading.analyte()
                + " read "
                + shown(reading)
                + ", is "
                + known.stream().map(ByteDamageSweep::shown).toList());
  }

  private static boolean alike(Reading one, Reading other) {
    var a = one.value().orElseThrow();
    var b = other.value().orElseThrow();
    return a.basis() == b.basis()
        && Math.abs(a.best() - b.best()) <= 1e-9 * Math.max(1, Math.abs(a.best()));
  }

  private static String shown(Reading reading) {
    var value = reading.value().orElseThrow();
    return reading.raw() + " = " + value.best() + " " + value.unit() + " " + value.basis();
  }

  /** Digits that no undamaged figure of the file has were hit themselves. */
  private void differs(String ending, String what, List<Sample> truth, Reading reading) {
    boolean checked = ending.equals("pdf") || ending.equals("zip") || ending.equals("xlsx");
    boolean ownDigits =
        truth.stream()
            .flatMap(s -> s.readings().stream())
            .noneMatch(r -> digits(r.raw()).equals(digits(reading.raw())));
    if (ownDigits && !checked) {
      count(ending, "figures with their own digits changed");
    } else {
      wrong.add(what);
    }
  }

  private static String digits(String raw) {
    return raw.replaceAll("[^0-9.,]", "");
  }

  private void count(String ending, String what) {
    counts.merge(ending + ": " + what, 1, Integer::sum);
  }
}
