package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The long form of the recovery tests, with the built program: {@code mvn -P soak verify}. Each
 * office must end with the outputs of one that met no trouble.
 */
class RecoverySoak {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");
  private static final String SECOND = "2026-03-16";
  private static final String THIRD = "2026-03-17";
  private static final long SEED = Long.getLong("rickyard.soak.seed", 20260316L);
  private static final int ENDED_BY_SIGNAL = 143;

  @TempDir static Path shared;
  private static Path afterFirst = Path.of("");
  private static Path afterSecond = Path.of("");
  private static Map<String, String> second = Map.of();
  private static Map<String, String> third = Map.of();
  private static long usualMillis;

  @TempDir Path folder;
  private final Random random = new Random(SEED);

  @BeforeAll
  static void threeMornings() throws IOException {
    Path whole = shared.resolve("whole");
    BuiltJar.copy(OFFICE, whole);
    morning(whole, "2026-03-15");
    afterFirst = shared.resolve("after-first");
    BuiltJar.copy(whole, afterFirst);
    Files.delete(whole.resolve("inbox/b-dry-matter-only.pdf"));
    Files.delete(afterFirst.resolve("inbox/b-dry-matter-only.pdf"));
    Files.writeString(
        whole.resolve("inbox/d-new.csv"),
        Files.readString(whole.resolve("inbox/a-long-table.csv")).replace(".", ".1"));
    Files.copy(whole.resolve("inbox/d-new.csv"), afterFirst.resolve("inbox/d-new.csv"));
    long start = System.nanoTime();
    morning(whole, SECOND);
    usualMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    second = BuiltJar.contents(whole.resolve("mornings"));
    afterSecond = shared.resolve("after-second");
    BuiltJar.copy(whole, afterSecond);
    morning(whole, THIRD);
    third = BuiltJar.contents(whole.resolve("mornings"));
  }

  private static List<String> command(Path office, String day) {
    return List.of("morning", office.toString(), "--as-of", day);
  }

  private static String morning(Path office, String day) throws IOException {
    BuiltJar.Ended ended = BuiltJar.run(List.of(), command(office, day));
    assertEquals(0, ended.status(), ended.output());
    return ended.output();
  }

  private Path copy(Path of, String name) throws IOException {
    Path office = folder.resolve(name);
    BuiltJar.copy(of, office);
    return office;
  }

  private static Path database(Path office) {
    return office.resolve("ledger/db/rickyard.mv.db");
  }

  @Test
  void aDatabaseCutAtTenPlaces() throws IOException {
    int said = 0;
    for (int i = 0; i < 10; i++) {
      Path office = copy(afterSecond, "cut-" + i);
      long length = Files.size(database(office));
      try (RandomAccessFile file = new RandomAccessFile(database(office).toFile(), "rw")) {
        file.setLength(length * i / 10);
      }
      String output = morning(office, THIRD);
      said += output.contains("rebuild ") || output.contains("repair ") ? 1 : 0;
      assertEquals(third, BuiltJar.contents(office.resolve("mornings")), "cut " + i);
    }
    System.out.println("database cut: 10 tried, 10 equal, " + said + " said so");
    assertEquals(10, said);
  }

  @Test
  void twentyRandomByteChangesInTheDatabase() throws IOException {
    int rebuilt = 0;
    for (int i = 0; i < 20; i++) {
      Path office = copy(afterSecond, "bytes-" + i);
      byte[] bytes = Files.readAllBytes(database(office));
      for (int n = 0; n < 1 + i; n++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
      }
      Files.write(database(office), bytes);
      rebuilt += morning(office, THIRD).contains("rebuild ") ? 1 : 0;
      assertEquals(third, BuiltJar.contents(office.resolve("mornings")), "seed " + SEED + ", " + i);
    }
    System.out.println("database bytes changed: 20 tried, 20 equal, " + rebuilt + " rebuilt");
    assertEquals(20, rebuilt);
  }

  @Test
  void askedToEndAtFiftyMoments() throws Exception {
    int landed = 0;
    long longest = 0;
    for (int i = 0; i < 50; i++) {
      Path office = copy(afterFirst, "term-" + i);
      Path log = folder.resolve("term-" + i + ".txt");
      Process run = BuiltJar.start(List.of(), command(office, SECOND), log);
      run.waitFor(usualMillis * (i + 1) / 52, TimeUnit.MILLISECONDS);
      long start = System.nanoTime();
      run.destroy();
      assertTrue(run.waitFor(30, TimeUnit.SECONDS), "ends within 30 s");
      longest = Math.max(longest, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
      landed += run.exitValue() == ENDED_BY_SIGNAL ? 1 : 0;
      assertTrue(run.exitValue() == ENDED_BY_SIGNAL || run.exitValue() == 0, Files.readString(log));
      morning(office, SECOND);
      assertEquals(second, BuiltJar.contents(office.resolve("mornings")), "moment " + i);
    }
    System.out.println(
        "asked to end: 50 tried, " + landed + " landed, 50 equal, longest end " + longest + " ms");
  }

  @Test
  void aRebuildKilledAtTenMoments() throws Exception {
    for (int i = 0; i < 10; i++) {
      Path office = copy(afterSecond, "rebuild-" + i);
      List<String> rebuild = List.of("rebuild", office.toString());
      Process run = BuiltJar.start(List.of(), rebuild, folder.resolve("rebuild.txt"));
      run.waitFor(usualMillis * (i + 3) / 12, TimeUnit.MILLISECONDS);
      run.destroyForcibly().waitFor();
      if (i % 2 == 0) {
        BuiltJar.Ended again = BuiltJar.run(List.of(), rebuild);
        assertEquals(0, again.status(), again.output());
      }
      morning(office, THIRD);
      assertEquals(third, BuiltJar.contents(office.resolve("mornings")), "rebuild " + i);
    }
    System.out.println("rebuild killed: 10 tried, 10 equal");
  }

  /** After a kill, what was written in the last two seconds is dropped or cut, flushed or not. */
  @Test
  void thePowerFailsAtTwentyMoments() throws Exception {
    int damaged = 0;
    for (int i = 0; i < 20; i++) {
      Path office = copy(afterFirst, "power-" + i);
      age(office);
      Process run = BuiltJar.start(List.of(), command(office, SECOND), folder.resolve("power.txt"));
      run.waitFor(usualMillis * (i + 1) / 20, TimeUnit.MILLISECONDS);
      run.destroyForcibly().waitFor();
      damaged += loseTheLastTwoSeconds(office);
      morning(office, SECOND);
      assertEquals(
          second, BuiltJar.contents(office.resolve("mornings")), "seed " + SEED + ", moment " + i);
    }
    System.out.println("power failed: 20 tried, " + damaged + " files lost or cut, 20 equal");
    assertTrue(damaged > 20, "the moments are well chosen");
  }

  private static void age(Path office) throws IOException {
    try (Stream<Path> files = Files.walk(office)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(3600)));
      }
    }
  }

  private int loseTheLastTwoSeconds(Path office) throws IOException {
    Instant since = Instant.now().minusSeconds(2);
    List<Path> young = new ArrayList<>();
    try (Stream<Path> files = Files.walk(office)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (Files.getLastModifiedTime(file).toInstant().isAfter(since)) {
          young.add(file);
        }
      }
    }
    int lost = 0;
    for (Path file : young) {
      int what = random.nextInt(3);
      if (what == 0) {
        Files.delete(file);
      } else if (what == 1) {
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)));
      }
      lost += what < 2 ? 1 : 0;
    }
    return lost;
  }

  /** Growth is that of the journal and of what arrived; nothing else is left behind. */
  @Test
  void fortyMorningsLeaveNothingBehind() throws IOException {
    Path office = copy(afterSecond, "forty");
    long early = 0;
    for (int i = 0; i < 40; i++) {
      morning(office, "2026-05-" + String.format(java.util.Locale.ROOT, "%02d", 1 + i / 2));
      Files.writeString(
          office.resolve("inbox/d-new.csv"),
          Files.readString(afterSecond.resolve("inbox/d-new.csv")) + "\n".repeat(1 + i % 2),
          StandardCharsets.UTF_8);
      early = i == 10 ? Files.size(database(office)) : early;
    }
    long late = Files.size(database(office));
    System.out.println("40 mornings: database " + early + " bytes after 10, " + late + " after 40");
    try (Stream<Path> files = Files.walk(office.resolve("ledger"))) {
      assertEquals(
          List.of(),
          files.filter(f -> f.toString().endsWith(".rickyard-tmp")).map(Path::toString).toList());
    }
    try (Stream<Path> files = Files.list(office.resolve("ledger/tmp"))) {
      assertEquals(List.of(), files.toList());
    }
    assertTrue(late < 4 * early, "the database does not grow without bound");
  }
}
