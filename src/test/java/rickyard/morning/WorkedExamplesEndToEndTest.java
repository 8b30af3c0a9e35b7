package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/**
 * docs/worked-examples.md: what is worked there by hand is what the demo's morning proposes. With
 * {@code -Drickyard.docs.write=true} the page is written, else compared.
 */
class WorkedExamplesEndToEndTest {
  private static final Path PAGE = Path.of("docs", "worked-examples.md");

  /** Tables print six decimals; a figure of a table that went into a sum has lost the rest. */
  private static final double RELATIVE = 2e-6;

  @TempDir Path folder;

  @Test
  void thePageIsWhatTheDemoProposes() throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(Path.of("fixtures", "office"), office);
    MorningEnd end = SmallOffice.run(office, LocalDate.of(2026, 3, 16));
    WorkedExamplesPage page =
        new WorkedExamplesPage(new WorkedSources(office.resolve("registers"), end));

    for (WorkedExamplesPage.Check check : page.checks()) {
      assertEquals(
          check.program(), check.byHand(), RELATIVE * Math.abs(check.program()), check.what());
    }
    assertTrue(page.checks().size() > 35, "only " + page.checks().size() + " results are held");
    if (Boolean.getBoolean("rickyard.docs.write")) {
      Files.writeString(PAGE, page.text(), StandardCharsets.UTF_8);
    } else {
      assertEquals(
          Files.readString(PAGE, StandardCharsets.UTF_8),
          page.text(),
          "docs/worked-examples.md is not what the demo gives; write it with"
              + " -Drickyard.docs.write=true");
    }
  }
}
