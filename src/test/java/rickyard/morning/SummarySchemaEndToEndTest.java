package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.docs.PublishedSchema;

/** summary.json of whole mornings is what its published schema says. */
class SummarySchemaEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final long SEED = 20_261_127L;

  @TempDir Path folder;

  @Test
  void theDemoIsValidAndSoAreOfficesWithRandomRegisters() throws IOException {
    Path demo = folder.resolve("demo");
    BuiltJar.copy(Path.of("fixtures", "office"), demo);
    assertValid(SmallOffice.run(demo, DAY), "demo");

    Random random = new Random(SEED);
    for (int round = 0; round < 2; round++) {
      Path office = folder.resolve("random-" + round);
      BuiltJar.copy(Path.of("src", "test", "resources", "skeleton-office"), office);
      scramble(office.resolve("registers"), random);
      String about = "seed " + SEED + ", round " + round;
      assertValid(SmallOffice.run(office, DAY), about);
    }
  }

  private static void assertValid(MorningEnd end, String about) {
    assertEquals(List.of(), PublishedSchema.faults(SmallOffice.text(end, "summary.json")), about);
  }

  /** Rows lost, cells blank, words wrong, conditions changed: what a hurried person does. */
  private static void scramble(Path registers, Random random) throws IOException {
    for (String file : List.of("horses.csv", "lots.csv", "rations.csv", "deliveries.csv")) {
      List<String> lines =
          new ArrayList<>(Files.readAllLines(registers.resolve(file), StandardCharsets.UTF_8));
      for (int i = 1; i < lines.size(); i++) {
        lines.set(i, scrambled(lines.get(i), random));
      }
      if (lines.size() > 2 && random.nextInt(3) == 0) {
        lines.remove(1 + random.nextInt(lines.size() - 1));
      }
      Files.write(registers.resolve(file), lines, StandardCharsets.UTF_8);
    }
  }

  private static String scrambled(String line, Random random) {
    String changed =
        line.replace(
            "laminitis-past",
            List.of("laminitis-acute", "insulin-dysregulation;ppid", "hypp", "pssm", "no-such")
                .get(random.nextInt(5)));
    List<String> cells = new ArrayList<>(List.of(changed.split(",", -1)));
    if (random.nextInt(3) == 0) {
      int at = 1 + random.nextInt(cells.size() - 1);
      cells.set(at, random.nextBoolean() ? "" : "x" + cells.get(at));
    }
    return String.join(",", cells);
  }
}
