package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rickyard.BuiltJar;
import rickyard.ledger.TestIndex;

/**
 * Several processes on one ledger: what workers read gives byte for byte what one process gives,
 * whoever is killed meanwhile and whenever. {@code -Drickyard.soak.workers=20} kills at so many
 * moments of each kind; the figures go to {@code target/soak}. Without a server ({@code -P
 * postgresql}, docs/postgresql.md) nothing of it runs.
 */
class WorkersIT {
  private static final int WANTED = Integer.getInteger("rickyard.soak.workers", 1);
  private static final long SEED = Long.getLong("rickyard.soak.seed", 20_260_316L);

  @TempDir static Path shared;
  private static Path made = Path.of("");
  private static Optional<Outcome> reference = Optional.empty();
  private static int documents;
  private static long readingMillis;

  /** Who is killed. */
  enum Killed {
    WORKER,
    RUN,
    BOTH
  }

  @BeforeAll
  static void oneProcessReadsIt() throws Exception {
    assumeTrue(TestIndex.isOnServer(), "rickyard.test.postgresql names no server");
    made = SoakOffice.sixty(shared.resolve("made"));
    Path alone = shared.resolve("alone");
    BuiltJar.copy(made, alone);
    BuiltJar.Ended ended =
        BuiltJar.run(
            BuiltJar.quick(),
            List.of(
                "morning",
                alone.toString(),
                "--as-of",
                SoakOffice.DAY,
                "--outputs",
                "data,page",
                "--ledger",
                alone.resolve("ledger").toString()));
    assertEquals(0, ended.status(), ended.output());
    reference = Optional.of(Outcome.of(alone));
    try (RemoteOffice office = new RemoteOffice(made, shared.resolve("remote"))) {
      office.worker();
      office.worker();
      Process morning = office.morning();
      office.awaitReading(morning);
      long start = System.nanoTime();
      while (morning.isAlive() && !office.said().contains(RemoteOffice.SETTLED)) {
        TimeUnit.MILLISECONDS.sleep(5);
      }
      readingMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
      assertEquals(0, office.end(morning), office.said());
      assertEquals(List.of(), whole().differences(office.folder()));
      documents = office.noted();
    }
    assertTrue(documents > 50, "documents: " + documents);
  }

  private static Outcome whole() {
    return reference.orElseThrow();
  }

  @ParameterizedTest
  @EnumSource
  void killedAtAnyMomentNothingIsLostAndNothingIsReadTwice(Killed kind, @TempDir Path folder)
      throws Exception {
    Random random = new Random(SEED + kind.name().hashCode());
    Tally tally = new Tally("workers-" + kind);
    for (int round = 1; tally.count("landed while documents were read") < WANTED; round++) {
      try (RemoteOffice office = new RemoteOffice(made, folder.resolve("office" + round))) {
        round(office, kind, (long) (random.nextDouble() * readingMillis), tally);
      }
      tally.add("rounds");
      tally.write();
      assertTrue(round < 5 * WANTED + 5, "kills do not land");
    }
    assertEquals(List.of(), tally.complaints());
  }

  private static void round(RemoteOffice office, Killed kind, long millis, Tally tally)
      throws Exception {
    String name = kind + " after " + millis + " ms";
    Process first = office.worker();
    office.worker();
    Process morning = office.morning();
    office.awaitReading(morning);
    morning.waitFor(millis, TimeUnit.MILLISECONDS);
    boolean landed = !office.said().contains(RemoteOffice.SETTLED);
    if (kind != Killed.RUN) {
      RemoteOffice.kill(first);
    }
    if (kind != Killed.WORKER) {
      RemoteOffice.kill(morning);
      morning = office.morning();
    }
    tally.add("landed while documents were read", landed ? 1 : 0);
    long start = System.nanoTime();
    int status = office.end(morning);
    tally.most(
        "longest time to the end, ms", TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
    String said = office.said();
    tally.complain("not ended well", name, status == 0 ? List.of() : List.of(said));
    tally.complain("different", name, whole().differences(office.folder()));
    tally.add("files compared", whole().paths().size());
    tally.add("parts given out again", said.contains("was not read to its end") ? 1 : 0);
    tally.add("read by the run itself", said.contains("reads by itself\n") ? 1 : 0);
    int noted = office.noted();
    tally.add("documents gone over again", Math.max(0, noted - documents));
    boolean oneJob = kind == Killed.WORKER && !said.contains("was not read to its end");
    tally.complain(
        "not read once each",
        name,
        !oneJob || noted == documents ? List.of() : List.of("noted " + noted));
  }

  /** The worker sees that it would read otherwise; the run waits, says so, and reads by itself. */
  @Test
  void aWorkerWithOtherTablesRefusesAndTheRunReadsByItself(@TempDir Path folder) throws Exception {
    Path config = Files.createDirectories(folder.resolve("config"));
    Files.writeString(
        config.resolve("spellings.csv"),
        "spelling,kind,meaning,language,source,status\n"
            + "Glittering sweetness,ANALYTE,WSC,en,office,assumed\n");
    try (RemoteOffice office = new RemoteOffice(made, folder.resolve("office"))) {
      Process worker = office.worker("--config", config.toString());
      Process morning = office.morning();

      assertEquals(0, office.end(morning), office.said());

      assertTrue(worker.waitFor(60, TimeUnit.SECONDS));
      String refused = Files.readString(office.workerLog());
      assertEquals(2, worker.exitValue(), refused);
      assertTrue(
          refused.contains("rickyard: This worker does not read for the morning of 2026-03-16"),
          refused);
      assertTrue(refused.contains("its tables of words are not the run's"), refused);
      String said = office.said();
      // Whether the run sees the worker before it ends or after is a matter of moments.
      assertTrue(
          said.contains("read     no worker is there; start rickyard worker")
              || said.contains("read     1 worker is there, with another program or other tables"),
          said);
      assertTrue(said.contains("read     nobody came; this run reads by itself"), said);
      assertEquals(List.of(), whole().differences(office.folder()));
    }
  }

  @Test
  void aLostConnectionIsOneSentenceForEachAndTheSameCommandsGoOn(@TempDir Path folder)
      throws Exception {
    try (RemoteOffice office = new RemoteOffice(made, folder.resolve("office"))) {
      Process worker = office.worker();
      Process morning = office.morning();
      office.awaitReading(morning);
      TestIndex.endSessions();

      assertEquals(1, office.end(morning), office.said());
      assertTrue(worker.waitFor(60, TimeUnit.SECONDS));

      String said = office.said();
      assertTrue(said.contains("rickyard: The connection to the PostgreSQL database "), said);
      assertEquals(1, said.lines().filter(l -> l.startsWith("rickyard: ")).count(), said);
      String lost = Files.readString(office.workerLog());
      assertEquals(1, worker.exitValue(), lost);
      assertTrue(lost.contains("rickyard: The connection to the PostgreSQL database "), lost);
      office.worker();
      assertEquals(0, office.end(office.morning()), office.said());
      assertEquals(List.of(), whole().differences(office.folder()));
    }
  }

  /** Another office's schema lies there already: a folder that has no name yet is not that one. */
  @Test
  void aWorkerOfAnOfficeWithoutALedgerWaitsForItsOwn(@TempDir Path folder) throws Exception {
    try (RemoteOffice other =
            new RemoteOffice(SoakOffice.three(folder.resolve("small")), folder.resolve("other"));
        RemoteOffice office = new RemoteOffice(folder.resolve("small"), folder.resolve("office"))) {
      other.worker();
      assertEquals(0, other.end(other.morning()), other.said());
      office.worker();
      long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
      while (!Files.readString(office.workerLog()).contains("\n") && System.nanoTime() < until) {
        TimeUnit.MILLISECONDS.sleep(20);
      }
      String said = Files.readString(office.workerLog());
      assertTrue(said.startsWith("wait     for the first morning of the office"), said);

      assertEquals(0, office.end(office.morning()), office.said());

      assertTrue(office.said().contains("1 worker is there, 3 of 3"), office.said());
    }
  }
}
