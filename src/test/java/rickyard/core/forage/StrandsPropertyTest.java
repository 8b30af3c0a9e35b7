package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Sorting by what samples share gives the strands that comparing every two of them gives. */
class StrandsPropertyTest {
  private static final long SEED = 20261126L;

  private static Sample sample(Random random) {
    String label = List.of("", "A", "B", "b ", "C").get(random.nextInt(5));
    String labNo = List.of("", "", "1", "2", "3").get(random.nextInt(5));
    Sample figures = Reports.sugars("N2", 8 + random.nextInt(2), 1);
    return new Sample(
        label,
        random.nextInt(6) == 0 ? "batch" : "",
        labNo,
        "",
        Optional.empty(),
        OptionalInt.empty(),
        figures.readings(),
        List.of(),
        List.of());
  }

  private static List<Held> series(Random random) {
    List<Held> series = new ArrayList<>();
    int documents = 1 + random.nextInt(4);
    for (int d = 0; d < documents; d++) {
      List<Sample> samples = new ArrayList<>();
      int count = random.nextInt(3) == 0 ? 1 : 1 + random.nextInt(4);
      for (int i = 0; i < count; i++) {
        samples.add(sample(random));
      }
      Received received =
          Reports.replacing(
              "d" + d,
              "R-" + random.nextInt(2),
              random.nextInt(3),
              random.nextInt(3) == 0 ? "R-" + random.nextInt(2) : "",
              random.nextInt(5) == 0 ? ReportStatus.WITHDRAWN : ReportStatus.FINAL,
              random.nextBoolean()
                  ? Optional.empty()
                  : Optional.of(LocalDate.of(2026, 3, 1 + random.nextInt(3))),
              samples.toArray(Sample[]::new));
      for (int i = 0; i < count; i++) {
        series.add(new Held(received, received.report(), i, samples.get(i)));
      }
    }
    return series;
  }

  /** The rule as it is said, for two samples. */
  private static boolean isSame(Held a, Held b) {
    if (a.key.document().equals(b.key.document())) {
      return false;
    }
    if (a.report.samples().size() == 1 && b.report.samples().size() == 1) {
      return Series.areSheetsOfOneSample(a, b);
    }
    if (!a.sample.labNo().isBlank() && !b.sample.labNo().isBlank()) {
      return a.sample.labNo().equals(b.sample.labNo());
    }
    String label = a.sample.label().strip().toUpperCase(Locale.ROOT);
    return !label.isEmpty()
        && label.equals(b.sample.label().strip().toUpperCase(Locale.ROOT))
        && a.sample.batch().equals(b.sample.batch());
  }

  private static Set<Set<String>> compared(List<Held> series) {
    List<Set<Held>> groups = new ArrayList<>();
    for (Held held : series) {
      Set<Held> joined = new java.util.HashSet<>(Set.of(held));
      groups.removeIf(
          group -> {
            boolean fits = group.stream().anyMatch(o -> isSame(o, held));
            return fits && joined.addAll(group);
          });
      groups.add(joined);
    }
    return names(groups);
  }

  private static Set<Set<String>> names(Iterable<? extends Iterable<Held>> groups) {
    Set<Set<String>> names = new java.util.HashSet<>();
    for (Iterable<Held> group : groups) {
      Set<String> keys = new TreeSet<>();
      group.forEach(h -> keys.add(h.key.document() + " " + h.key.index()));
      names.add(keys);
    }
    return names;
  }

  /** Documents of which a standing, newer one replaced the sheet, every two samples compared. */
  private static Set<String> replaced(List<List<Held>> strands, Precedence precedence) {
    Set<String> replaced = new TreeSet<>();
    List<Held> all = strands.stream().flatMap(List::stream).toList();
    for (Held newer : all) {
      for (Held held : all) {
        boolean before =
            strands.stream()
                .filter(s -> s.contains(newer))
                .flatMap(List::stream)
                .anyMatch(o -> o.key.document().equals(held.key.document()));
        if (newer.stands()
            && newer.report.status() != ReportStatus.WITHDRAWN
            && !newer.key.document().equals(held.key.document())
            && (before || precedence.replaces(newer.report, held.report))
            && precedence.isNewer(newer.report, held.report)) {
          replaced.add(held.key.document());
        }
      }
    }
    return replaced;
  }

  @Test
  void strandsAreThoseOfComparingEveryTwoSamples() {
    Random random = new Random(SEED);
    int joined = 0;
    int sheets = 0;
    for (int round = 0; round < 4_000; round++) {
      List<Held> series = series(random);
      List<List<Held>> strands = Strands.of(series);
      assertEquals(compared(series), names(strands), "seed " + SEED + ", round " + round);
      joined += strands.stream().anyMatch(s -> s.size() > 1) ? 1 : 0;
      series.stream()
          .filter(h -> random.nextInt(4) == 0)
          .forEach(h -> h.stand(Standing.SUPERSEDED, "newer-revision", ""));
      Precedence precedence =
          new Precedence(series.stream().map(h -> h.report).distinct().toList());
      Sheets found = Sheets.of(strands, precedence);
      Set<String> names = new TreeSet<>();
      series.stream()
          .filter(h -> found.isReplaced(h.report))
          .forEach(h -> names.add(h.key.document()));
      assertEquals(replaced(strands, precedence), names, "seed " + SEED + ", round " + round);
      sheets += names.size();
    }
    assertTrue(joined > 1_000 && sheets > 500, joined + " rounds with revisions, " + sheets);
  }
}
