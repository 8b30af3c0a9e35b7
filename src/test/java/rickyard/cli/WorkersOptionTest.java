package rickyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;
import rickyard.morning.Workers;

/** Who reads, as it is said on the command line, and what is refused before anything is touched. */
class WorkersOptionTest {
  private record Ran(int status, String said) {}

  private static Ran run(List<String> arguments) {
    PrintStream usual = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try {
      return new Ran(Rickyard.run(arguments), said.toString(StandardCharsets.UTF_8));
    } finally {
      System.setErr(usual);
    }
  }

  @Test
  void aNumberReadsHereAndTheWordElsewhere() {
    assertEquals(Workers.of(3), new WorkersOption().convert("3"));
    assertTrue(new WorkersOption().convert("remote").elsewhere());
    assertTrue(new WorkersOption().convert("Remote").elsewhere());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "65", "-1", "", "two", "remotely"})
  void anythingElseIsRefusedWithWhatIsTaken(String text) {
    TypeConversionException refusal =
        assertThrows(TypeConversionException.class, () -> new WorkersOption().convert(text));

    assertEquals("--workers is 1 to 64, or remote, not " + text, refusal.getMessage());
  }

  @Test
  void aMorningWithALedgerInAFolderRefusesToWaitForWorkersAndTouchesNothing(@TempDir Path office)
      throws Exception {
    Files.createDirectories(office.resolve("inbox"));

    Ran ran =
        run(
            List.of(
                "morning",
                office.toString(),
                "--workers",
                "remote",
                "--ledger",
                office.resolve("ledger").toString()));

    assertEquals(2, ran.status());
    assertEquals(
        "rickyard: --workers remote needs a ledger that workers on other machines can reach: give"
            + " --ledger jdbc:postgresql://HOST/DATABASE, and start rickyard worker with the"
            + " same.\n",
        ran.said());
    assertFalse(Files.exists(office.resolve("ledger")));
  }

  @Test
  void aWorkerWithoutAServerSaysWhatToGive(@TempDir Path office) {
    Ran ran = run(List.of("worker", office.toString(), "--ledger", office.resolve("x").toString()));

    assertEquals(2, ran.status());
    assertEquals(
        "rickyard: A worker needs the server of the office's ledger: give --ledger"
            + " jdbc:postgresql://HOST/DATABASE, as for the morning with --workers remote.\n",
        ran.said());
  }

  @Test
  void aWorkerOfAFolderThatIsNotThereSaysSo(@TempDir Path folder) {
    String missing = folder.resolve("gone").toString();

    Ran ran = run(List.of("worker", missing, "--ledger", "jdbc:postgresql://127.0.0.1:1/hay"));

    assertEquals(2, ran.status());
    assertEquals("rickyard: The folder " + missing + " does not exist.\n", ran.said());
  }

  @Test
  void aWorkerWithoutAnAnswerFromTheServerEndsInOneSentence() {
    Ran ran = run(List.of("worker", "--ledger", "jdbc:postgresql://127.0.0.1:1/hay"));

    assertEquals(1, ran.status());
    assertTrue(ran.said().startsWith("rickyard: There is no answer from the PostgreSQL database"));
    assertEquals(1, ran.said().lines().count());
  }
}
