package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole mornings of the built program with a reader that goes wrong on files of certain names: they
 * cost only themselves, and no process is left behind however the run ends.
 */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class IsolationIT {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");
  private static final List<String> BAD = List.of("bad-burst.csv", "bad-exit.csv", "bad-throw.csv");

  /** What names every file or counts them; everything else speaks of the good reports alone. */
  private static final Set<String> COUNTING =
      Set.of("outcomes.csv", "summary.html", "summary.json", "summary.pdf");

  @TempDir Path folder;

  private Path office(String name, List<String> more) throws IOException {
    Path office = folder.resolve(name);
    BuiltJar.copy(OFFICE, office);
    for (String file : more) {
      Files.writeString(office.resolve("inbox").resolve(file), file, StandardCharsets.UTF_8);
    }
    return office;
  }

  private Process start(Path office, String day, String reader) throws IOException {
    String separator = File.pathSeparator;
    String classPath =
        BuiltJar.path()
            + separator
            + Path.of("src", "test", "resources", reader)
            + separator
            + Path.of("target", "test-classes");
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(BuiltJar.quick());
    words.addAll(List.of("-cp", classPath, "rickyard.cli.Rickyard"));
    words.addAll(List.of("morning", office.toString(), "--as-of", day, "--outputs", "data,page"));
    return new ProcessBuilder(words)
        .redirectErrorStream(true)
        .redirectOutput(log(office).toFile())
        .start();
  }

  private static Path log(Path office) {
    return office.resolveSibling(office.getFileName() + ".log");
  }

  /** Waits for the end and gives every process that was seen below the run. */
  private static Set<ProcessHandle> childrenUntilTheEnd(Process run) throws InterruptedException {
    Set<ProcessHandle> seen = ConcurrentHashMap.newKeySet();
    do {
      run.descendants().forEach(seen::add);
    } while (!run.waitFor(20, TimeUnit.MILLISECONDS));
    return seen;
  }

  private static ProcessHandle firstChild(Process run) throws InterruptedException {
    while (run.isAlive()) {
      var child = run.descendants().findFirst();
      if (child.isPresent()) {
        return child.get();
      }
      Thread.sleep(10);
    }
    throw new IllegalStateException("ended without a child");
  }

  private static void assertGone(Set<ProcessHandle> children) {
    for (ProcessHandle child : children) {
      child.onExit().orTimeout(30, TimeUnit.SECONDS).join();
    }
  }

  private static Map<String, String> decisions(Path office) throws IOException {
    Map<String, String> all = new TreeMap<>(BuiltJar.contents(office.resolve("mornings")));
    all.keySet().removeIf(name -> COUNTING.contains(name.substring(name.lastIndexOf('/') + 1)));
    // what could not be read is due to be asked for again
    all.computeIfPresent("2026-03-16/follow-ups.csv", (name, text) -> withoutBad(text));
    return all;
  }

  private static String withoutBad(String text) {
    return text.lines()
        .filter(line -> BAD.stream().noneMatch(line::contains))
        .collect(Collectors.joining("\n"));
  }

  private static String outcomes(Path office) throws IOException {
    return Files.readString(office.resolve("mornings/2026-03-16/outcomes.csv"));
  }

  @Test
  void filesThatBreakTheReaderAreRefusedAndChangeNothingElse() throws Exception {
    Path good = office("good", List.of());
    Path mixed = office("mixed", BAD);
    Process alone = start(good, "2026-03-16", "faulty-reader");
    assertGone(childrenUntilTheEnd(alone));
    assertEquals(0, alone.exitValue(), Files.readString(log(good)));

    Process run = start(mixed, "2026-03-16", "faulty-reader");
    Set<ProcessHandle> children = childrenUntilTheEnd(run);

    assertEquals(0, run.exitValue(), Files.readString(log(mixed)));
    assertTrue(!children.isEmpty());
    assertGone(children);
    assertEquals(decisions(good), decisions(mixed));
    String rest =
        outcomes(mixed)
            .lines()
            .filter(line -> BAD.stream().noneMatch(line::startsWith))
            .collect(Collectors.joining("\n"));
    assertEquals(outcomes(good).strip(), rest);
    String due = Files.readString(mixed.resolve("mornings/2026-03-16/follow-ups.csv"));
    BAD.forEach(name -> assertTrue(due.contains(",question," + name + ","), due));
    assertTrue(outcomes(mixed).contains("refused,too-much-memory,"), outcomes(mixed));
    assertTrue(outcomes(mixed).contains("refused,reader-stopped,"), outcomes(mixed));
    assertTrue(outcomes(mixed).contains("refused,reader-failed,"), outcomes(mixed));

    // The next day everything is known: nothing is read, so no child is started.
    Process next = start(good, "2026-03-17", "faulty-reader");
    assertEquals(Set.of(), childrenUntilTheEnd(next));
    assertEquals(0, next.exitValue(), Files.readString(log(good)));
  }

  @Test
  void noChildOutlivesAKilledRun() throws Exception {
    Process run = start(office("killed", List.of("bad-hang.csv")), "2026-03-16", "faulty-reader");
    ProcessHandle child = firstChild(run);

    run.destroyForcibly().waitFor();

    assertGone(Set.of(child));
  }

  @Test
  void noChildOutlivesARunThatIsAskedToEnd() throws Exception {
    Path office = office("ended", List.of("bad-wait.csv"));
    Process run = start(office, "2026-03-16", "faulty-reader");
    ProcessHandle child = firstChild(run);
    TimeUnit.SECONDS.sleep(2);

    run.destroy();

    assertGone(Set.of(child));
    assertTrue(run.waitFor(30, TimeUnit.SECONDS));
  }

  @Test
  void withoutAReaderTheRunFailsWithOneSentenceAndReadsNothingItself() throws Exception {
    Path office = office("broken", List.of());
    Process run = start(office, "2026-03-16", "broken-reader");

    assertGone(childrenUntilTheEnd(run));

    String said = Files.readString(log(office));
    assertEquals(1, run.exitValue(), said);
    assertTrue(said.contains("rickyard: The process that reads files cannot be started ("), said);
    assertTrue(!Files.exists(office.resolve("mornings")), said);
  }
}
