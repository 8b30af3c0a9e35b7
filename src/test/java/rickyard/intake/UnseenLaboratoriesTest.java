package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;

/**
 * Reads {@code fixtures/laboratories/unseen}: reports, with their truth, by somebody who knew
 * nothing of the reader.
 */
class UnseenLaboratoriesTest {
  private static final double TOLERANCE = 1.2e-2;

  /** When the files came 167 were; later work on the reader must not fall back. */
  private static final int FEWEST_RIGHT = 545;

  private static LaboratoryFolder folder;

  @BeforeAll
  static void read() throws IOException {
    folder = new LaboratoryFolder(Path.of("fixtures/laboratories/unseen"), TOLERANCE);
  }

  private static Optional<Reading> found(CSVRecord row) {
    return Stream.of(row.get("code").split("\\|", -1))
        .flatMap(
            code ->
                folder.sample(row).stream()
                    .flatMap(s -> LaboratoryFolder.reading(s, code).stream()))
        .findFirst()
        .or(() -> folder.found(row));
  }

  @Test
  void noSettledFigureIsWrongAndMostAreRead() {
    List<String> wrong = new ArrayList<>();
    int right = 0;
    for (CSVRecord row : folder.values()) {
      Optional<Reading> settled = found(row).filter(Reading::isSettled);
      if (settled.isEmpty() || row.get("note").equals("ask") || row.get("value").isEmpty()) {
        continue;
      }
      if (folder.isRight(row, settled.get())) {
        right++;
      } else {
        wrong.add(row.toMap() + " read " + settled.get());
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(right >= FEWEST_RIGHT, "right " + right);
  }

  @Test
  void whatTheReportsLeaveOpenIsNeverSettled() {
    List<String> settled = new ArrayList<>();
    for (CSVRecord row : folder.values()) {
      boolean open = row.get("note").equals("ask") || row.get("value").isEmpty();
      if (open && found(row).filter(Reading::isSettled).isPresent()) {
        settled.add(row.toMap() + " read " + found(row).get());
      }
    }
    assertEquals(List.of(), settled);
  }

  @Test
  void theStandingOfARowIsThatOfItsSampleAlone() {
    List<String> other = new ArrayList<>();
    for (CSVRecord row : folder.rows("lots.csv")) {
      Optional<Report> report = folder.reports(row.get("file")).stream().findFirst();
      String read =
          folder
              .sample(row)
              .flatMap(Sample::standing)
              .or(() -> report.map(Report::status))
              .map(s -> s.code())
              .orElse("");
      if (!row.get("status").isEmpty() && !row.get("status").equals(read)) {
        other.add(row.toMap() + " read " + read);
      }
    }
    assertEquals(List.of(), other);
  }
}
