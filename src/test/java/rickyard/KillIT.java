package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.ledger.TestIndex;

/**
 * Kills the built program in the middle of a morning and starts the same command again.
 *
 * <p>The short version of what {@code -P soak} does hundreds of times (docs/robustness.md). It
 * still proves that one kill while reading, one while outputs appear and one full disk while
 * outputs appear are made good by the same command, that a rerun of finished work touches nothing,
 * and that a second run is sent away.
 */
class KillIT {
  private static final String DAY = "2026-03-16";
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir static Path shared;
  private static Map<String, String> uninterrupted = Map.of();
  private static long usualMillis;

  @BeforeAll
  static void runOnceWithoutInterruption() throws IOException {
    Path office = shared.resolve("whole");
    BuiltJar.copy(OFFICE, office);
    List<String> quick = BuiltJar.quick();
    long start = System.nanoTime();
    BuiltJar.Ended ended = BuiltJar.run(quick, command(office));
    usualMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    assertEquals(0, ended.status(), ended.output());
    uninterrupted = BuiltJar.contents(office.resolve("mornings"));
    assertTrue(uninterrupted.containsKey(DAY + "/outcomes.csv"), uninterrupted.keySet().toString());
  }

  /** Without paper, which is published the same way as the rest and costs most of the time. */
  private static List<String> command(Path office) {
    return List.of("morning", office.toString(), "--as-of", DAY, "--outputs", "data,page");
  }

  @ParameterizedTest(name = "killed after {0} % of the usual time")
  @ValueSource(ints = {55})
  void theSameCommandAfterAKillGivesTheSameOutputs(int percent, @TempDir Path folder)
      throws IOException, InterruptedException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    List<String> command = command(office);
    Process victim = BuiltJar.start(BuiltJar.quick(), command, folder.resolve("log.txt"));
    victim.waitFor(usualMillis * percent / 100, TimeUnit.MILLISECONDS);
    victim.destroyForcibly().waitFor();

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command);

    assertEquals(0, ended.status(), ended.output());
    assertEquals(uninterrupted, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void aKillWhileOutputsAppearLeavesNoTornFileAndTheRerunCompletesThem(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    List<String> command = command(office);
    Path out = office.resolve("mornings").resolve(DAY);
    Process victim = BuiltJar.start(BuiltJar.quick(), command, folder.resolve("log.txt"));
    while (victim.isAlive() && !Files.isDirectory(out)) {
      Thread.onSpinWait();
    }
    victim.destroyForcibly().waitFor();

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command);

    assertEquals(0, ended.status(), ended.output());
    assertEquals(uninterrupted, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void runAgainOverFinishedWorkNothingIsNewAndNoByteChanges() throws IOException {
    Path office = shared.resolve("whole");
    Path run = office.resolve("mornings").resolve(DAY).resolve("run.json");
    byte[] before = Files.readAllBytes(run);

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command(office));

    assertEquals(0, ended.status(), ended.output());
    assertTrue(ended.output().contains("Nothing is new"), ended.output());
    assertEquals(uninterrupted, BuiltJar.contents(office.resolve("mornings")));
    assertEquals(
        new String(before, java.nio.charset.StandardCharsets.UTF_8), Files.readString(run));
  }

  @Test
  void outputsThatWereRemovedOrChangedArePublishedAgain(@TempDir Path folder) throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(shared.resolve("whole"), office);
    Path out = office.resolve("mornings").resolve(DAY);
    Files.delete(out.resolve("verdicts.csv"));
    Files.writeString(out.resolve("horses.csv"), "damaged");

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command(office));

    assertEquals(0, ended.status(), ended.output());
    assertEquals(uninterrupted, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void aLostDatabaseIsBuiltAgainFromOriginalsAndJournal(@TempDir Path folder) throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(shared.resolve("whole"), office);
    TestIndex.lose(office.resolve("ledger"));
    Files.delete(office.resolve("mornings").resolve(DAY).resolve("lots.csv"));

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command(office));

    assertEquals(0, ended.status(), ended.output());
    assertEquals(uninterrupted, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void aSecondRunAtTheSameTimeSaysSoAndEndsWithStatusThree(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    List<String> command = command(office);
    Process first = BuiltJar.start(BuiltJar.quick(), command, folder.resolve("log.txt"));
    while (first.isAlive() && !Files.isDirectory(office.resolve("ledger/originals"))) {
      Thread.onSpinWait();
    }

    BuiltJar.Ended second = BuiltJar.run(BuiltJar.quick(), command);
    first.waitFor();

    assertEquals(3, second.status(), second.output());
    assertTrue(second.output().contains("Another run holds this office"), second.output());
    assertEquals(0, first.exitValue());
  }
}
