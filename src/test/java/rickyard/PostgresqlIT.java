package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.ledger.TestIndex;

/**
 * The built program with its index on a server: the outputs are those of an office in one folder,
 * whatever happens to the server, the connection or the program on the way. Without a server
 * ({@code -P postgresql}, docs/postgresql.md) nothing of it runs.
 */
class PostgresqlIT {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");
  private static final String FIRST = "2026-03-16";
  private static final String SECOND = "2026-03-17";
  private static final int KILLS = 5;

  @TempDir static Path shared;
  private static Map<String, String> afterOne = Map.of();
  private static Map<String, String> afterTwo = Map.of();
  private static long usualMillis;

  @BeforeAll
  static void twoMorningsInOneFolder() throws IOException {
    assumeTrue(TestIndex.isOnServer(), "rickyard.test.postgresql names no server");
    Path office = shared.resolve("file");
    BuiltJar.copy(OFFICE, office);
    done(inFolder(office, FIRST));
    afterOne = BuiltJar.contents(office.resolve("mornings"));
    done(inFolder(office, SECOND));
    afterTwo = BuiltJar.contents(office.resolve("mornings"));
    assertTrue(Files.exists(office.resolve("ledger/db/rickyard.mv.db")));
    Path first = shared.resolve("server");
    BuiltJar.copy(OFFICE, first);
    long start = System.nanoTime();
    done(onServer(first, FIRST));
    usualMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    assertFalse(Files.exists(first.resolve("ledger/db")));
    assertEquals(afterOne, BuiltJar.contents(first.resolve("mornings")));
  }

  private static List<String> onServer(Path office, String day) {
    return List.of(
        "morning",
        office.toString(),
        "--as-of",
        day,
        "--outputs",
        "data,page",
        "--ledger",
        TestIndex.url());
  }

  private static List<String> inFolder(Path office, String day) {
    return List.of(
        "morning",
        office.toString(),
        "--as-of",
        day,
        "--outputs",
        "data,page",
        "--ledger",
        office.resolve("ledger").toString());
  }

  private static String done(List<String> command) throws IOException {
    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command);
    assertEquals(0, ended.status(), ended.output());
    return ended.output();
  }

  @Test
  void anEmptiedServerIsNoticedAndTheSecondMorningIsTheSame(@TempDir Path folder)
      throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    done(onServer(office, FIRST));
    TestIndex.lose(office.resolve("ledger"));

    String output = done(onServer(office, SECOND));

    assertTrue(output.contains("rebuild  the ledger's database is missing"), output);
    assertEquals(afterTwo, BuiltJar.contents(office.resolve("mornings")));
    assertTrue(done(onServer(office, SECOND)).contains("Nothing is new"));
    TestIndex.lose(office.resolve("ledger"));
  }

  @Test
  void killedAtAnyMomentTheSameCommandGivesTheSameOutputs(@TempDir Path folder)
      throws IOException, InterruptedException {
    Random random = new Random(20260316);
    for (int i = 0; i < KILLS; i++) {
      Path office = folder.resolve("office-" + i);
      BuiltJar.copy(OFFICE, office);
      Process victim =
          BuiltJar.start(BuiltJar.quick(), onServer(office, FIRST), folder.resolve("log.txt"));
      long millis = usualMillis / 4 + (long) (random.nextDouble() * usualMillis * 3 / 4);
      victim.waitFor(millis, TimeUnit.MILLISECONDS);
      victim.destroyForcibly().waitFor();

      done(onServer(office, FIRST));

      assertEquals(afterOne, BuiltJar.contents(office.resolve("mornings")), "after " + millis);
      TestIndex.lose(office.resolve("ledger"));
    }
  }

  @Test
  void aLostConnectionEndsInOneSentenceAndTheSameCommandGoesOn(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    Path log = folder.resolve("log.txt");
    Process victim = BuiltJar.start(BuiltJar.quick(), onServer(office, FIRST), log);
    while (victim.isAlive() && !Files.readString(log).contains("keep ")) {
      Thread.onSpinWait();
    }
    TestIndex.endSessions();
    victim.waitFor();

    String said = Files.readString(log);
    assertEquals(1, victim.exitValue(), said);
    assertTrue(said.contains("rickyard: The connection to the PostgreSQL database "), said);
    assertEquals(1, said.lines().filter(l -> l.startsWith("rickyard: ")).count(), said);
    done(onServer(office, FIRST));
    assertEquals(afterOne, BuiltJar.contents(office.resolve("mornings")));
    TestIndex.lose(office.resolve("ledger"));
  }

  /** Two machines with a copy of the folder each: only the server knows of both. */
  @Test
  void aSecondMachineIsSentAwayWithStatusThree(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path here = folder.resolve("here");
    Path there = folder.resolve("there");
    BuiltJar.copy(OFFICE, here);
    Files.createDirectories(here.resolve("ledger"));
    Files.writeString(here.resolve("ledger/office-id"), "5eed".repeat(8));
    BuiltJar.copy(here, there);
    Path log = folder.resolve("log.txt");
    Process first = BuiltJar.start(BuiltJar.quick(), onServer(here, FIRST), log);
    while (first.isAlive() && !Files.readString(log).contains("arrive ")) {
      Thread.onSpinWait();
    }
    assertTrue(first.isAlive(), Files.readString(log));
    // Held up, so that it outlasts the patience of the second.
    new ProcessBuilder("kill", "-STOP", String.valueOf(first.pid())).start().waitFor();
    BuiltJar.Ended second = BuiltJar.run(BuiltJar.quick(), onServer(there, FIRST));
    new ProcessBuilder("kill", "-CONT", String.valueOf(first.pid())).start().waitFor();
    first.waitFor();

    assertEquals(3, second.status(), second.output());
    assertTrue(second.output().contains("perhaps on another machine"), second.output());
    assertEquals(0, first.exitValue(), Files.readString(log));
    assertEquals(afterOne, BuiltJar.contents(here.resolve("mornings")));
    TestIndex.lose(here.resolve("ledger"));
  }
}
