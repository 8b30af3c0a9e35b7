package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;

/**
 * Reads {@code fixtures/laboratories/unusual}: layouts that no laboratory would be advised to
 * print. What is taken must be right; what is not understood must be asked or refused.
 */
class UnusualLayoutsTest {
  /** One of them prints as-fed figures in whole g/kg. */
  private static final double TOLERANCE = 2e-2;

  @Test
  void noSettledFigureDiffersFromThePrintedOne() throws IOException {
    LaboratoryFolder folder =
        new LaboratoryFolder(Path.of("fixtures/laboratories/unusual"), TOLERANCE);
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
    assertTrue(compared > 430, "compared " + compared);
  }
}
