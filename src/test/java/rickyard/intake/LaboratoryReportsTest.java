package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;

/**
 * Reads {@code fixtures/laboratories}: reports in layouts that the reader's authors did not lay
 * out, by somebody who has not seen the reader. The truth was written before the files were
 * rendered.
 */
class LaboratoryReportsTest {
  private static final Path FOLDER = Path.of("fixtures/laboratories");

  private static LaboratoryFolder folder;

  @BeforeAll
  static void readAll() throws IOException {
    folder = new LaboratoryFolder(FOLDER, 2e-3);
  }

  /** The figures of well-formed reports that the reader did not settle, with the reason. */
  private static List<String> misses() {
    List<String> misses = new ArrayList<>();
    for (CSVRecord row : folder.values()) {
      if (LaboratoryFolder.isCoded(row)
          && folder.files().get(row.get("file")).get("well_formed").equals("yes")) {
        Optional<Reading> found = folder.found(row);
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

  @Test
  void noSettledFigureDiffersFromThePrintedOne() {
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (CSVRecord row : folder.values()) {
      Optional<Reading> found =
          LaboratoryFolder.isCoded(row) ? folder.found(row) : Optional.empty();
      if (found.filter(Reading::isSettled).isPresent()) {
        compared++;
        if (!folder.isRight(row, found.get())) {
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
    for (CSVRecord row : folder.rows("not-values.csv")) {
      Optional<Reading> found =
          folder
              .sample(row)
              .flatMap(s -> LaboratoryFolder.reading(s, row.get("code")))
              .filter(Reading::isSettled);
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
        folder.values().stream()
            .filter(
                r ->
                    LaboratoryFolder.isCoded(r)
                        && folder.files().get(r.get("file")).get("well_formed").equals("yes"))
            .count();
    double share = 1 - misses.size() / (double) wanted;
    assertTrue(
        share >= 0.98, () -> misses.size() + " of " + wanted + ":\n" + String.join("\n", misses));
  }

  @Test
  void hardlyAnyWellFormedReportIsAskedAbout() {
    Set<String> asked = new TreeSet<>();
    long wellFormed =
        folder.files().values().stream().filter(f -> f.get("well_formed").equals("yes")).count();
    for (CSVRecord file : folder.files().values()) {
      if (file.get("well_formed").equals("yes") && isAsked(file.get("file"))) {
        asked.add(file.get("file"));
      }
    }
    assertTrue(asked.size() <= 0.05 * wellFormed, () -> asked + " of " + wellFormed);
  }

  private static boolean isAsked(String file) {
    List<Report> reports = folder.reports(file);
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
    for (CSVRecord file : folder.files().values()) {
      if (file.get("well_formed").equals("no") && !isAsked(file.get("file"))) {
        accepted.add(file.get("file"));
      }
    }
    assertEquals(Set.of("weighbridge lab note 14.pdf"), accepted);
  }
}
