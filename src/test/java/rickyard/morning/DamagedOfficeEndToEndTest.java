package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.ledger.LedgerException;
import rickyard.ledger.TestIndex;

/**
 * An office whose memory was damaged after two mornings goes on as one whose memory was not: the
 * third morning, the second one published again, and the open questions are the same.
 */
class DamagedOfficeEndToEndTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 3, 14);
  private static final LocalDate SECOND = FIRST.plusDays(1);
  private static final LocalDate THIRD = FIRST.plusDays(2);
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir static Path shared;
  private static Path afterTwo = Path.of("");
  private static Map<String, String> third = Map.of();
  private static List<OpenQuestion> questions = List.of();

  @TempDir Path folder;
  private final List<String> said = new ArrayList<>();

  @BeforeAll
  static void twoMorningsAndAThird() throws IOException {
    afterTwo = shared.resolve("after-two");
    BuiltJar.copy(SKELETON, afterTwo);
    Path horses = afterTwo.resolve("registers/horses.csv");
    // Nobody has said how long this pony grazes: the morning asks.
    Files.writeString(
        horses, Files.readString(horses).replace(",2,no,0,no,none", ",2,no,,no,none"));
    run(afterTwo, Optional.of(FIRST), FIRST, Progress.silent());
    // What left the inbox counts from the originals alone.
    Files.delete(afterTwo.resolve("inbox/b-dry-matter-only.pdf"));
    run(afterTwo, Optional.of(SECOND), SECOND, Progress.silent());
    Path whole = shared.resolve("whole");
    BuiltJar.copy(afterTwo, whole);
    questions =
        OfficeSettle.open(SmallOffice.folders(whole), SECOND, Progress.silent()).questions();
    run(whole, Optional.of(THIRD), THIRD, Progress.silent());
    third = BuiltJar.contents(whole.resolve("mornings"));
    assertTrue(questions.stream().anyMatch(q -> q.about().equals("pip")), questions::toString);
  }

  private static MorningEnd run(
      Path office, Optional<LocalDate> day, LocalDate today, Progress progress) {
    OfficeFolders folders = SmallOffice.folders(office);
    folders.check();
    return new Morning(
            folders,
            new Options("kg", new TreeSet<>(List.of("data", "page"))),
            1,
            progress,
            ledger -> {})
        .run(day, today);
  }

  private Path office() throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(afterTwo, office);
    return office;
  }

  private static Path database(Path office) {
    return office.resolve("ledger/db/rickyard.mv.db");
  }

  private Progress listening() {
    return new Progress() {
      @Override
      public void line(String text) {
        said.add(text);
      }

      @Override
      public void step(String stage, int done, int total) {}
    };
  }

  /** Stops the run when it says that it has come to a stage. */
  private static Progress stoppingAt(String stage) {
    return new Progress() {
      @Override
      public void line(String text) {
        if (text.startsWith(stage)) {
          throw new IllegalStateException("stopped here");
        }
      }

      @Override
      public void step(String what, int done, int total) {
        line(what);
      }
    };
  }

  private void assertThirdIsTheSame(Path office) throws IOException {
    run(office, Optional.of(THIRD), THIRD, listening());
    assertEquals(third, BuiltJar.contents(office.resolve("mornings")));
  }

  private void assertSaid(String start) {
    assertTrue(said.stream().anyMatch(line -> line.startsWith(start)), said::toString);
  }

  @Test
  void withoutItsDatabaseTheThirdMorningIsTheSame() throws IOException {
    Path office = office();
    TestIndex.lose(office.resolve("ledger"));

    assertThirdIsTheSame(office);
    assertSaid("rebuild  the ledger's database is missing; made again");
  }

  @Test
  void withoutItsDatabaseTheQuestionsAreTheSameAndTheLastMorningIsPublishedAgain()
      throws IOException {
    Path office = office();
    Map<String, String> before = BuiltJar.contents(office.resolve("mornings"));
    TestIndex.lose(office.resolve("ledger"));
    Files.delete(office.resolve("mornings/" + SECOND + "/horses.csv"));

    assertEquals(
        questions,
        OfficeSettle.open(SmallOffice.folders(office), SECOND, Progress.silent()).questions());
    assertTrue(run(office, Optional.of(SECOND), SECOND, listening()).nothingNew());
    assertEquals(before, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void withAHoleInItsDatabaseTheThirdMorningIsTheSame() throws IOException {
    assumeFalse(TestIndex.isOnServer(), "a server looks after its files");
    Path office = office();
    byte[] bytes = Files.readAllBytes(database(office));
    Arrays.fill(bytes, bytes.length / 3, bytes.length - 1, (byte) 7);
    Files.write(database(office), bytes);

    assertThirdIsTheSame(office);
    assertSaid("rebuild  the ledger's database ");
  }

  @Test
  void rebuiltOnRequestTheThirdMorningIsTheSameAndNothingIsReadAgain() throws IOException {
    Path office = office();

    List<String> end = OfficeRebuild.of(SmallOffice.folders(office), listening(), ledger -> {});

    assertEquals(
        List.of("Rebuilt: 2 finished mornings and 3 originals, each checked and read again."), end);
    assertThirdIsTheSame(office);
  }

  @Test
  void aRebuildNamesAnOriginalThatIsDamagedAndPutsItBackFromTheInbox() throws IOException {
    Path office = office();
    byte[] report = Files.readAllBytes(SKELETON.resolve("inbox/b-dry-matter-only.pdf"));
    Path original = office.resolve("ledger/originals/" + rickyard.ledger.Originals.sha256(report));
    byte[] damaged = report.clone();
    damaged[100]++;
    Files.write(original, damaged);
    OfficeFolders folders = SmallOffice.folders(office);

    LedgerException e =
        assertThrows(
            LedgerException.class, () -> OfficeRebuild.of(folders, listening(), ledger -> {}));
    assertEquals(
        "The original "
            + original
            + " is damaged: its content no longer matches its name. Put it back from a backup of"
            + " the ledger, or put the report into the inbox again, then run the same command"
            + " again.",
        e.getMessage());

    Files.write(office.resolve("inbox/again.pdf"), report);
    OfficeRebuild.of(folders, listening(), ledger -> {});
    assertSaid("restore  The original " + original);
    Files.delete(office.resolve("inbox/again.pdf"));
    assertThirdIsTheSame(office);
  }

  @Test
  void anInterruptedMorningKeepsItsDateWithoutTheDatabase() throws IOException {
    Path office = office();
    Optional<LocalDate> asked = Optional.of(THIRD);
    assertThrows(
        MorningFailedException.class, () -> run(office, asked, THIRD, stoppingAt("judge")));
    TestIndex.lose(office.resolve("ledger"));

    MorningEnd end = run(office, Optional.empty(), THIRD.plusDays(5), listening());

    assertEquals(THIRD, end.asOf());
    assertEquals(third, BuiltJar.contents(office.resolve("mornings")));
  }

  @Test
  void whatTheJobSaysOfItsStepsIsNotTakenOnTrust() throws IOException, SQLException {
    Path office = office();
    Path blocked = office.resolve("mornings/" + THIRD + "/horses.csv/in-the-way");
    Files.createDirectories(blocked);
    Optional<LocalDate> asked = Optional.of(THIRD);
    assertThrows(MorningFailedException.class, () -> run(office, asked, THIRD, Progress.silent()));
    Files.delete(blocked);
    Files.delete(blocked.getParent());
    // The step that failed, publish, is said to be done; what the others left is gone.
    inDatabase(office, "UPDATE batch_step_execution SET status = 'COMPLETED'");
    inDatabase(office, "DELETE FROM reading");
    inDatabase(office, "DELETE FROM stage");

    assertThirdIsTheSame(office);
  }

  @Test
  void aJobThatCannotBeGoneOnWithIsStartedAnew() throws IOException, SQLException {
    Path office = office();
    Optional<LocalDate> asked = Optional.of(THIRD);
    assertThrows(
        MorningFailedException.class, () -> run(office, asked, THIRD, stoppingAt("advise")));
    inDatabase(office, "UPDATE batch_step_execution SET status = 'COMPLETEE'");

    assertThirdIsTheSame(office);
    assertSaid("rebuild  the ledger's database turned out to be damaged; made again");
  }

  private static void inDatabase(Path office, String sql) throws SQLException {
    TestIndex.change(office.resolve("ledger"), sql);
  }

  @Test
  void outputsThatCannotBeWrittenAreNamedAndTheNextRunRepairsThem() throws IOException {
    Path office = office();
    Path blocked = office.resolve("mornings/" + THIRD + "/horses.csv/in-the-way");
    Files.createDirectories(blocked);

    MorningFailedException e =
        assertThrows(
            MorningFailedException.class,
            () -> run(office, Optional.of(THIRD), THIRD, Progress.silent()));

    assertTrue(
        String.valueOf(e.getMessage())
            .startsWith("The outputs cannot be written to " + blocked.getParent() + ": "),
        e::getMessage);
    assertFalse(Files.exists(blocked.resolveSibling("../run.json")));
    Files.delete(blocked);
    Files.delete(blocked.getParent());
    assertThirdIsTheSame(office);
  }

  @Test
  void aMorningThatWasPublishedBeforeTheLedgerKnewCountsAsFinished() throws IOException {
    Path office = office();
    run(office, Optional.of(THIRD), THIRD, Progress.silent());
    // The head as it was before the end: the state of a run killed after its last output.
    Path head = office.resolve("ledger/journal/head.json");
    Path before = folder.resolve("before");
    BuiltJar.copy(afterTwo, before);
    assertThrows(
        MorningFailedException.class,
        () -> run(before, Optional.of(THIRD), THIRD, stoppingAt("settle")));
    String begun = Files.readString(before.resolve("ledger/journal/head.json"));
    String moved =
        begun.replace(before.toAbsolutePath().toString(), office.toAbsolutePath().toString());
    Files.writeString(head, resealed(moved));
    // People acted on the outputs and emptied the inbox.
    Files.delete(office.resolve("inbox/a-long-table.csv"));

    MorningEnd end = run(office, Optional.of(THIRD.plusDays(1)), THIRD.plusDays(1), listening());

    String analyses = Files.readString(end.out().resolve("analyses.csv"));
    assertTrue(analyses.contains("a-long-table.csv"), analyses);
    assertTrue(Files.exists(office.resolve("ledger/journal/4.json")));
  }

  private static String resealed(String json) {
    String open = json.replaceAll(",\"sha256\":\"[0-9a-f]{64}\"\\}$", "");
    byte[] bytes = open.getBytes(StandardCharsets.UTF_8);
    return open + ",\"sha256\":\"" + rickyard.ledger.Originals.sha256(bytes) + "\"}";
  }

  @Test
  void theLedgerOfAnEarlierVersionIsCopiedAndGoesOn() throws IOException {
    assumeFalse(TestIndex.isOnServer(), "no earlier version knew a server");
    Path office = folder.resolve("older");
    BuiltJar.copy(SKELETON, office);
    unzip(Path.of("src/test/resources/ledger-of-version-2.zip"), office.resolve("ledger"));
    byte[] was = Files.readAllBytes(database(office));
    Path other = folder.resolve("older-without-database");
    BuiltJar.copy(office, other);
    TestIndex.lose(other.resolve("ledger"));
    LocalDate next = LocalDate.of(2026, 3, 17);

    MorningEnd end = run(office, Optional.of(next), next, listening());
    run(other, Optional.of(next), next, Progress.silent());

    Path copy = office.resolve("ledger/before-3");
    assertSaid("upgrade  the ledger of an earlier version is kept in " + copy);
    assertTrue(Arrays.equals(was, Files.readAllBytes(copy.resolve("db/rickyard.mv.db"))));
    assertTrue(Files.exists(copy.resolve("journal/2.json")));
    String outcomes = Files.readString(end.out().resolve("outcomes.csv"));
    assertTrue(outcomes.contains("a-long-table.csv") && outcomes.contains(",known,"), outcomes);
    assertEquals(
        BuiltJar.contents(other.resolve("mornings")),
        BuiltJar.contents(office.resolve("mornings")));
    assertThrows(
        UsageException.class,
        () -> run(office, Optional.of(FIRST), FIRST, Progress.silent()),
        "it still knows its last morning");
  }

  private static void unzip(Path zip, Path to) throws IOException {
    try (InputStream in = Files.newInputStream(zip);
        ZipInputStream entries = new ZipInputStream(in)) {
      for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
        Path target = to.resolve(entry.getName());
        Files.createDirectories(target.getParent());
        Files.write(target, entries.readAllBytes());
      }
    }
  }
}
