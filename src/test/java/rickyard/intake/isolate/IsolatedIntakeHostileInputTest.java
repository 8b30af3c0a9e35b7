package rickyard.intake.isolate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ReadingProgress;
import rickyard.tables.DictionaryTables;

/** A reader that hangs, bursts, ends or talks nonsense costs one file and nothing else. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class IsolatedIntakeHostileInputTest {
  private static final ChildSetup SETUP =
      new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT);
  private static final ProcessLimits TIGHT =
      new ProcessLimits(
          64,
          1L << 20,
          64,
          1_024,
          Duration.ofSeconds(2),
          Duration.ofSeconds(1),
          Duration.ofSeconds(6),
          Duration.ofSeconds(20),
          64,
          64);
  private static final byte[] GOOD =
      "Lot,L-1\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,7.0\nStarch,%,0.6\n"
          .getBytes(StandardCharsets.UTF_8);

  private final List<String> told = Collections.synchronizedList(new ArrayList<>());
  private final IsolatedIntake intake =
      new IsolatedIntake(SETUP, TIGHT, 2, this::listener, command("faulty-reader"));

  private ReadingProgress listener(String name) {
    return (what, done, total) -> told.add(name + " " + what + " " + done + " of " + total);
  }

  private static ChildCommand command(String reader) {
    ChildCommand usual = ChildCommand.ofThisProcess();
    Path service = Path.of("src", "test", "resources", reader).toAbsolutePath();
    return new ChildCommand(
        usual.program(), service + File.pathSeparator + usual.classPath(), usual.heapMib());
  }

  @AfterEach
  void nobodyIsLeft() {
    List<Long> children = intake.pids();
    intake.close();
    assertTrue(
        children.stream()
            .flatMap(pid -> ProcessHandle.of(pid).stream())
            .noneMatch(ProcessHandle::isAlive));
  }

  private ReadDocument only(String name, byte[] bytes) {
    ReadFile file = intake.read(bytes, name);
    assertEquals(1, file.documents().size());
    return file.documents().get(0);
  }

  @Test
  void aGoodFileIsReadAsInThisProcess() {
    ReadFile expected = ReaderMaker.usual(SETUP, ReadingProgress.none()).read(GOOD, "good.csv");

    assertEquals(expected, intake.read(GOOD, "good.csv"));
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "bad-hang|too-slow|Reading it was stopped, twice, after 2 s of computing or 6 s of doing nothing,"
            + " the limit for a file of this size; ask for it in smaller parts or as another file.",
        "bad-wait|too-slow|Reading it was stopped, twice, after 2 s of computing or 6 s of doing nothing,"
            + " the limit for a file of this size; ask for it in smaller parts or as another file.",
        "bad-burst|too-much-memory|Reading it needs more than 64 MiB of memory, the limit for one"
            + " file, tried twice; ask for it in smaller parts or as another file.",
        "bad-exit|reader-stopped|The reader's process ended while reading it, twice; ask for the"
            + " report as another file or type the figures in.",
        "bad-throw|reader-failed|The reader failed on it, twice; ask for the report as another file"
            + " or type the figures in.",
        "bad-deep|reader-failed|The reader failed on it, twice; ask for the report as another file"
            + " or type the figures in.",
        "bad-noise|answer-unreadable|The reader's answer on it could not be used, twice; ask for"
            + " the report as another file or type the figures in.",
        "bad-foreign|answer-unreadable|The reader's answer on it could not be used, twice; ask for"
            + " the report as another file or type the figures in."
      })
  void aFileThatBreaksItsReaderIsRefusedAndTheNextIsRead(
      String name, String code, String sentence) {
    ReadDocument bad = only(name, GOOD);

    assertEquals(code, bad.code());
    assertEquals(sentence, bad.reason());
    assertTrue(only("good.csv", GOOD).report().isPresent());
  }

  @Test
  void aFileThatFailsOnceIsReadAtTheSecondTry(@TempDir Path folder) {
    byte[] mark = folder.resolve("tried").toString().getBytes(StandardCharsets.UTF_8);

    ReadDocument read = only("first-time-bad.csv", mark);

    assertEquals("no-analytes", read.code());
  }

  @Test
  void whatALibraryPrintsDoesNotFallAmongTheAnswersAndProgressIsPassedOn() {
    assertTrue(only("chatty.csv", GOOD).report().isPresent());
    assertEquals(List.of("chatty.csv rows 3 of 7"), told);
  }

  @Test
  void childrenComeWithNeedAndNotBefore() throws Exception {
    assertEquals(0, intake.running());
    only("good.csv", GOOD);
    assertEquals(1, intake.running());
    ExecutorService readers = Executors.newFixedThreadPool(3);
    try {
      Future<ReadDocument> slow = readers.submit(() -> only("bad-wait.csv", GOOD));
      while (intake.running() < 1) {
        Thread.onSpinWait();
      }
      List<Future<ReadDocument>> quick = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        quick.add(readers.submit(() -> only("good.csv", GOOD)));
      }
      for (Future<ReadDocument> each : quick) {
        assertTrue(each.get(2, TimeUnit.MINUTES).report().isPresent());
        assertTrue(intake.running() <= 2);
      }
      assertEquals("too-slow", slow.get(2, TimeUnit.MINUTES).code());
    } finally {
      readers.shutdownNow();
    }
  }

  /**
   * Each file takes 0.4 s, and what was read is put away before the next is asked for: two readers
   * hand one child to and fro. No single wait is worth a start, but all of them together are.
   */
  @Test
  void filesThatWaitTimeAndAgainGetAnotherChild() throws Exception {
    only("good.csv", GOOD);
    ExecutorService readers = Executors.newFixedThreadPool(2);
    try {
      List<Future<ReadDocument>> all = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        all.add(readers.submit(() -> putAway(only("chatty.csv", GOOD))));
      }
      for (Future<ReadDocument> each : all) {
        assertTrue(each.get(2, TimeUnit.MINUTES).report().isPresent());
      }
      assertEquals(2, intake.running());
    } finally {
      readers.shutdownNow();
    }
  }

  private static ReadDocument putAway(ReadDocument read) throws InterruptedException {
    Thread.sleep(200);
    return read;
  }

  @Test
  void aChildThatWasKilledWhileIdleIsReplaced() {
    only("good.csv", GOOD);
    long first = intake.pids().get(0);
    ProcessHandle.of(first).orElseThrow().destroyForcibly();
    ProcessHandle.of(first).ifPresent(handle -> handle.onExit().join());

    assertTrue(only("good.csv", GOOD).report().isPresent());
  }

  @Test
  void aReaderThatCannotBeStartedStopsTheRunWithOneSentence() {
    ChildCommand usual = command("faulty-reader");
    ChildCommand none =
        new ChildCommand(Path.of("no-such-java"), usual.classPath(), usual.heapMib());
    try (IsolatedIntake broken =
        new IsolatedIntake(SETUP, TIGHT, 1, n -> ReadingProgress.none(), none)) {

      ReaderUnavailableException e =
          assertThrows(ReaderUnavailableException.class, () -> broken.read(GOOD, "good.csv"));

      assertTrue(
          e.getMessage().startsWith("The process that reads files cannot be started ("),
          e.getMessage());
      assertTrue(
          e.getMessage()
              .endsWith(
                  "); check that java may be run from here and that memory is free, then run the"
                      + " same command again."),
          e.getMessage());
    }
  }

  @Test
  void aChildWithoutAReaderIsNoFaultOfTheFile() {
    try (IsolatedIntake broken =
        new IsolatedIntake(
            SETUP, TIGHT, 1, n -> ReadingProgress.none(), command("broken-reader"))) {

      ReaderUnavailableException e =
          assertThrows(ReaderUnavailableException.class, () -> broken.read(GOOD, "good.csv"));

      assertTrue(e.getMessage().contains("out of order"), e.getMessage());
    }
  }

  @Test
  void afterTheEndNoFileIsReadOrRefused() {
    only("good.csv", GOOD);
    intake.close();

    assertThrows(IllegalStateException.class, () -> intake.read(GOOD, "good.csv"));
  }
}
