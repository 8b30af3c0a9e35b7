package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The same office on the same day gives the same bytes, whatever the machine is set to.
 *
 * <p>The short version holds one odd machine, with the other compiler and collector, against a
 * plain one; {@code -P soak} holds two more.
 */
class SameInSameOutIT {
  private static final String DAY = "2026-03-16";
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir static Path shared;
  private static Map<String, String> expected = Map.of();

  @BeforeAll
  static void runOnce() throws IOException {
    expected = run(shared.resolve("plain"), List.of(), List.of());
  }

  private static Map<String, String> run(Path office, List<String> jvm, List<String> more)
      throws IOException {
    BuiltJar.copy(OFFICE, office);
    List<String> command =
        new java.util.ArrayList<>(List.of("morning", office.toString(), "--as-of", DAY));
    command.addAll(more);
    BuiltJar.Ended ended = BuiltJar.run(jvm, command);
    assertEquals(0, ended.status(), ended.output());
    return BuiltJar.contents(office.resolve("mornings").resolve(DAY));
  }

  @Test
  void localeTimeZoneCharsetAndWorkersChangeNoByte(@TempDir Path folder) throws IOException {
    holdsOn("ar", "EG", "America/St_Johns", 4, folder);
  }

  @ParameterizedTest
  @EnabledIfSystemProperty(named = "rickyard.soak", matches = "true")
  @CsvSource({"tr, TR, Pacific/Kiritimati, 1", "de, DE, Asia/Kathmandu, 8"})
  void neitherDoMoreOfThem(
      String language, String country, String zone, int workers, @TempDir Path folder)
      throws IOException {
    holdsOn(language, country, zone, workers, folder);
  }

  private static void holdsOn(
      String language, String country, String zone, int workers, Path folder) throws IOException {
    List<String> jvm = new java.util.ArrayList<>(BuiltJar.quick());
    jvm.addAll(
        List.of(
            "-Duser.language=" + language,
            "-Duser.country=" + country,
            "-Duser.timezone=" + zone,
            "-Dfile.encoding=ISO-8859-1"));

    Map<String, String> found =
        run(folder.resolve("office"), jvm, List.of("--workers", String.valueOf(workers)));

    assertEquals(expected, found);
  }

  @Test
  void otherFileNamesChangeOnlyTheFileNames(@TempDir Path folder) throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    Path inbox = office.resolve("inbox");
    Files.move(inbox.resolve("a-long-table.csv"), inbox.resolve("z-long-table.csv"));

    BuiltJar.Ended ended =
        BuiltJar.run(BuiltJar.quick(), List.of("morning", office.toString(), "--as-of", DAY));

    assertEquals(0, ended.status(), ended.output());
    Map<String, String> found = BuiltJar.contents(office.resolve("mornings").resolve(DAY));
    for (String file : List.of("verdicts.csv", "lots.csv", "horses.csv", "diets.csv")) {
      assertEquals(expected.get(file), found.get(file), file);
    }
    assertEquals(
        lines(expected.get("analyses.csv")),
        lines(String.valueOf(found.get("analyses.csv")).replace("z-long-table", "a-long-table")));
  }

  private static List<String> lines(String text) {
    return text.lines().sorted().toList();
  }
}
