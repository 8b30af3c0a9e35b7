package rickyard.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Writes the page about changes that no test sees where the property {@code rickyard.mutation.page}
 * names its file and {@code rickyard.mutation.reports} the tester's reports; else holds the page
 * that is there to the reasons that are claimed.
 */
class MutationPageTest {
  private static final Path PAGE = Path.of("docs/mutation.md");
  private static final List<String> ROOMS =
      List.of("quantity", "settling", "journal", "ledger", "judgement", "nutrition");

  private static final String REPORT =
      """
      <mutations>
      %s
      </mutations>
      """;

  private static String mutation(String status, String method, String description) {
    return """
        <mutation status='%s'><mutatedClass>rickyard.core.quantity.Normal</mutatedClass>\
        <mutatedMethod>%s</mutatedMethod><description>%s</description></mutation>
        """
        .formatted(status, method, description);
  }

  private static byte[] report(String... mutations) {
    return REPORT.formatted(String.join("\n", mutations)).getBytes(StandardCharsets.UTF_8);
  }

  private static String page(String... mutations) throws IOException {
    MutationReport report = MutationReport.of("quantity", report(mutations));
    return MutationPage.of(List.of(report), List.of(), Claims.load());
  }

  private static String page(Path folder) throws IOException {
    List<MutationReport> reports = new ArrayList<>();
    List<String> notRun = new ArrayList<>();
    for (String room : ROOMS) {
      MutationReport.read(room, folder).ifPresentOrElse(reports::add, () -> notRun.add(room));
    }
    return MutationPage.of(reports, notRun, Claims.load());
  }

  @Test
  void writesThePageOrHoldsItToItsClaims() throws IOException {
    String file = System.getProperty("rickyard.mutation.page", "");
    if (!file.isEmpty()) {
      Path folder = Path.of(System.getProperty("rickyard.mutation.reports"));
      Files.writeString(Path.of(file), page(folder));
    }
    String page = Files.readString(PAGE);
    Claims.load()
        .all()
        .forEach(
            (key, claim) -> {
              assertTrue(page.contains(claim.reason()), "not on the page: " + key);
              assertTrue(page.lines().anyMatch(l -> l.replace("`", "").contains(key)), key);
            });
  }

  @Test
  void countsEachKindAndTheShareThatWasSeen() throws IOException {
    String page =
        page(
            mutation("KILLED", "cdf", "negated conditional"),
            mutation("TIMED_OUT", "cdf", "negated conditional"),
            mutation("SURVIVED", "other", "removed call to java/util/List::sort"),
            mutation("NO_COVERAGE", "lambda$other$3", "negated conditional"),
            mutation("MEMORY_ERROR", "other", "negated conditional"),
            mutation("NON_VIABLE", "other", "negated conditional"));

    assertTrue(page.contains("| quantity | 5 | 1 | 1 | 1 | 1 | 1 | 40.0 % | 0 (0.0 %) |"), page);
    assertTrue(page.contains("| Normal | `other` | removed call to List::sort | 1 |"), page);
    assertTrue(page.contains("| Normal | `other` | negated conditional | 2 |"), page);
  }

  @Test
  void noMoreIsClaimedThanSurvived() throws IOException {
    String boundary = mutation("SURVIVED", "cdf", "changed conditional boundary");

    assertTrue(page(boundary).contains("| 1 (100.0 %) |"));
    String three = page(boundary, boundary, boundary);
    assertTrue(three.contains("| 2 (66.7 %) |"), three);
    assertTrue(three.contains("| 3 | 2 of them: "), three);
  }

  @Test
  void aRoomWithoutSurvivorsSaysSo() throws IOException {
    assertTrue(
        page(mutation("KILLED", "cdf", "negated conditional"))
            .endsWith("Every change was seen.\n"));
  }

  @Test
  void aRoomWithoutReportIsSaidNotToHaveBeenRun(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("ledger"));
    Files.write(
        folder.resolve("ledger/mutations.xml"),
        report(mutation("KILLED", "cdf", "negated conditional")));

    String page = page(folder);

    assertTrue(page.contains("| ledger | 1 | 1 | 0 | 0 | 0 | 0 | 100.0 % |"), page);
    assertTrue(
        page.contains("\nNot run: quantity, settling, journal, judgement, nutrition.\n"), page);
  }

  @Test
  void aReportThatWasCutIsRefused(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("ledger"));
    Files.writeString(folder.resolve("ledger/mutations.xml"), "<mutations><mutation");

    assertEquals(
        "the report of the mutation tester is no XML",
        assertThrows(IOException.class, () -> page(folder)).getMessage());
  }
}
