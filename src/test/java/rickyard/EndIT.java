package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program is asked to end, or is in trouble: what it leaves, says and returns. */
class EndIT {
  private static final String DAY = "2026-03-16";
  private static final int ENDED_BY_SIGNAL = 143;
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir Path folder;

  private static List<String> command(Path office) {
    return List.of("morning", office.toString(), "--as-of", DAY, "--outputs", "data,page");
  }

  @Test
  void aRunThatIsAskedToEndClosesItsLedgerAndGoesOnLater() throws Exception {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    Path log = folder.resolve("log.txt");
    List<String> command = command(office);
    Process run = BuiltJar.start(BuiltJar.quick(), command, log);
    Path originals = office.resolve("ledger/originals");
    while (run.isAlive() && !Files.isDirectory(originals)) {
      Thread.sleep(5);
    }

    run.destroy();

    assertTrue(run.waitFor(30, TimeUnit.SECONDS), "ends within 30 s");
    assertEquals(ENDED_BY_SIGNAL, run.exitValue(), Files.readString(log));
    assertTrue(
        Files.readString(log)
            .contains(
                "rickyard: asked to end; nothing is half-written, the same command goes on where"
                    + " it stopped."),
        Files.readString(log));
    assertEquals(List.of(), temporary(office.resolve("ledger")));
    BuiltJar.Ended again = BuiltJar.run(BuiltJar.quick(), command);
    assertEquals(0, again.status(), again.output());
    assertTrue(again.output().contains("resume   the morning of " + DAY), again.output());
    assertPrivate(office.resolve("ledger"));
  }

  private static List<String> temporary(Path folder) throws IOException {
    List<String> left = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files.map(Path::toString).filter(name -> name.endsWith(".rickyard-tmp")).forEach(left::add);
    }
    return left;
  }

  /** Every folder of the ledger is its owner's alone, where the file system knows owners. */
  private static void assertPrivate(Path ledger) throws IOException {
    if (!Files.getFileStore(ledger).supportsFileAttributeView("posix")) {
      return;
    }
    try (Stream<Path> files = Files.walk(ledger)) {
      for (Path folder : files.filter(Files::isDirectory).toList()) {
        assertEquals(
            "rwx------",
            PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)),
            folder.toString());
      }
    }
  }

  @Test
  void outputsThatCannotBeWrittenEndInOneSentenceWithPathAndLogAndNoNameInTheLog()
      throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    Path blocked = office.resolve("mornings").resolve(DAY).resolve("horses.csv");
    Files.createDirectories(blocked.resolve("in-the-way"));

    BuiltJar.Ended ended = BuiltJar.run(BuiltJar.quick(), command(office));

    Path log = office.resolve("ledger/logs/rickyard.log");
    List<String> trouble = ended.output().lines().filter(l -> l.startsWith("rickyard: ")).toList();
    assertEquals(1, ended.status(), ended.output());
    assertEquals(
        List.of(
            "rickyard: The outputs cannot be written to "
                + blocked.toAbsolutePath()
                + ": Is a directory. The log is "
                + log
                + "."),
        trouble,
        ended.output());
    String logged = Files.readString(log);
    assertTrue(logged.contains("rickyard.ledger.LedgerException"), logged);
    assertTrue(!logged.contains("horses.csv") && !logged.contains("pip"), logged);
  }

  @Test
  void aRebuildThatIsKilledCanBeRunAgain() throws Exception {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    BuiltJar.Ended morning = BuiltJar.run(BuiltJar.quick(), command(office));
    assertEquals(0, morning.status(), morning.output());
    List<String> command = List.of("rebuild", office.toString());
    Process run = BuiltJar.start(BuiltJar.quick(), command, folder.resolve("log.txt"));
    Path aside = office.resolve("ledger/set-aside");
    while (run.isAlive() && !Files.isDirectory(aside)) {
      Thread.sleep(2);
    }
    run.destroyForcibly().waitFor();

    BuiltJar.Ended again = BuiltJar.run(BuiltJar.quick(), command);

    assertEquals(0, again.status(), again.output());
    assertTrue(
        again.output().contains("Rebuilt: 1 finished morning and 3 originals"), again.output());
    BuiltJar.Ended nothing = BuiltJar.run(BuiltJar.quick(), command(office));
    assertTrue(nothing.output().contains("Nothing is new"), nothing.output());
  }
}
