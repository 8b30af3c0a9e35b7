package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/** What is found wrong with the database at the opening, what becomes of it and what is said. */
class DatabaseDamageTest {
  private static final String URL = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE";

  @TempDir static Path shared;
  private static List<String> truth = List.of();

  @TempDir Path temp;
  private Path folder = Path.of("");
  private final KeptLedger.Inbox inbox = new KeptLedger.Inbox();

  @BeforeAll
  static void keepALedger() throws IOException {
    KeptLedger.make(shared.resolve("whole"));
    BuiltJar.copy(shared.resolve("whole"), shared.resolve("undamaged"));
    try (Ledger ledger = Ledger.open(shared.resolve("undamaged"), Rescue.none())) {
      truth = KeptLedger.says(ledger);
    }
  }

  @BeforeEach
  void copyIt() throws IOException {
    folder = temp.resolve("ledger");
    BuiltJar.copy(shared.resolve("whole"), folder);
    // As after a kill: nothing but the database itself tells that it is damaged.
    ClosedMark.lift(folder.resolve("db"));
  }

  @Test
  void oneChangedByteOfAClosedDatabaseIsFoundByItsMark() throws IOException {
    Path closed = temp.resolve("closed");
    BuiltJar.copy(shared.resolve("whole"), closed);
    byte[] bytes = Files.readAllBytes(KeptLedger.database(closed));
    bytes[bytes.length - 1] ^= 1;
    Files.write(KeptLedger.database(closed), bytes);
    folder = closed;

    assertRebuilt("was altered while it was closed", true);
  }

  @Test
  void theMarkIsThereOnlyWhileTheDatabaseIsClosed() {
    Path mark = folder.resolve("db").resolve("closed.sha256");
    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(truth, KeptLedger.says(ledger));
      assertFalse(Files.exists(mark));
    }
    assertTrue(Files.exists(mark));
    assertFalse(ClosedMark.isAltered(folder.resolve("db")));
    assertEquals(List.of(), inbox.said());
  }

  private void assertRebuilt(String why, boolean keptAside) {
    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(truth, KeptLedger.says(ledger));
      assertEquals(List.of(), KeptLedger.wrongResults(ledger));
    }
    String aside = keptAside ? "; the old one is in " + folder.resolve("set-aside/db") : "";
    assertEquals(
        List.of(
            "rebuild  the ledger's database "
                + why
                + "; made again from originals and journal (2 mornings)"
                + aside),
        inbox.said());
    assertEquals(keptAside, Files.exists(folder.resolve("set-aside/db/rickyard.mv.db")));
  }

  private void inDatabase(String sql) throws SQLException {
    try (Connection connection =
            DriverManager.getConnection(
                "jdbc:h2:file:" + folder.resolve("db/rickyard") + URL, "rickyard", "");
        Statement statement = connection.createStatement()) {
      assertTrue(statement.executeUpdate(sql) > 0, sql);
    }
  }

  @Test
  void oneThatIsGoneIsMadeAgain() throws IOException {
    Files.delete(KeptLedger.database(folder));

    assertRebuilt("is missing", false);
  }

  @Test
  void oneThatIsCutIsMadeAgainAndKeptAside() throws IOException {
    byte[] bytes = Files.readAllBytes(KeptLedger.database(folder));
    Files.write(KeptLedger.database(folder), Arrays.copyOf(bytes, 200));

    assertRebuilt("cannot be opened", true);
  }

  @Test
  void anotherFileInItsPlaceIsPutAside() throws IOException {
    Files.writeString(KeptLedger.database(folder), "not a database at all\n".repeat(1000));

    assertRebuilt("cannot be opened", true);
  }

  @Test
  void aByteOfAPathThatTheDatabaseReadsWithoutComplaintIsSeen() throws IOException {
    replaceInFile("report-1.csv", "report-7.csv");

    assertRebuilt("is damaged", true);
  }

  private void replaceInFile(String was, String is) throws IOException {
    Path file = KeptLedger.database(folder);
    String text = Files.readString(file, StandardCharsets.ISO_8859_1);
    assertTrue(text.contains(was), "the file holds it as text");
    Files.writeString(file, text.replace(was, is), StandardCharsets.ISO_8859_1);
  }

  @Test
  void aRowThatWasTakenOutIsSeen() throws SQLException {
    inDatabase("DELETE FROM arrival WHERE morning = 2 AND seq = 3");

    assertRebuilt("is damaged", true);
  }

  @Test
  void aSchemaOfALaterVersionThatTheJournalKnowsNothingOfIsPutAside() throws SQLException {
    inDatabase("UPDATE \"flyway_schema_history\" SET \"version\" = '9' WHERE \"version\" = '3'");

    assertRebuilt("is damaged", true);
  }

  @Test
  void theDatabaseOfAnotherOfficeGivesWayToTheJournal() throws IOException {
    Path other = temp.resolve("other");
    try (Ledger ledger = Ledger.open(other, Rescue.none())) {
      ledger.mornings().begin(KeptLedger.morning(1, false), List.of(KeptLedger.arrival(9)), "out");
      ledger.checkpoint();
    }
    Files.copy(
        KeptLedger.database(other),
        KeptLedger.database(folder),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);

    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(truth, KeptLedger.says(ledger));
    }
    assertEquals(
        List.of("repair   the ledger's database lacked 2 mornings; put back from the journal"),
        inbox.said());
  }

  @Test
  void aResultThatWasAlteredCountsAsNotThere() throws SQLException {
    // The packed text of one reading in the row of another: both are whole, one is wrong.
    String one = KeptLedger.arrival(1).sha256();
    String two = KeptLedger.arrival(2).sha256();
    inDatabase(
        "UPDATE reading SET document = (SELECT r.document FROM reading r WHERE r.sha256 = '"
            + two
            + "'), seal = (SELECT r.seal FROM reading r WHERE r.sha256 = '"
            + two
            + "') WHERE sha256 = '"
            + one
            + "'");

    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertTrue(ledger.results().hasReading(one, KeptLedger.READER));
      assertEquals(
          Optional.empty(), ledger.results().reading(one, KeptLedger.READER, String.class));
      assertEquals(
          Optional.of("reads 2"), ledger.results().reading(two, KeptLedger.READER, String.class));
    }
  }

  @Test
  void aStepOfAnotherMorningOfTheSameNumberIsNotUsed() {
    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(
          Optional.of("step 3"), ledger.results().step(3, "identity-3", "advice", String.class));
      assertEquals(
          Optional.empty(), ledger.results().step(3, "identity-4", "advice", String.class));
    }
  }

  @Test
  void aRebuildThatIsAskedForKeepsTheOldOneAsideAndSaysTheSame() {
    try (Ledger ledger = Ledger.rebuild(folder, inbox, "is put aside as asked")) {
      assertEquals(truth, KeptLedger.says(ledger));
    }
    assertTrue(Files.exists(folder.resolve("set-aside/db/rickyard.mv.db")));
  }

  @Test
  void oneThatAnotherProgramHasOpenIsLeftAlone() throws IOException {
    byte[] before = Files.readAllBytes(KeptLedger.database(folder));
    try (FileChannel channel =
            FileChannel.open(KeptLedger.database(folder), StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      LedgerException e = assertThrows(LedgerException.class, () -> Ledger.open(folder, inbox));

      assertTrue(held.isValid());
      assertEquals(
          "The ledger's database in "
              + folder.resolve("db")
              + " is open in another program; close that first.",
          e.getMessage());
    }
    assertTrue(Arrays.equals(before, Files.readAllBytes(KeptLedger.database(folder))));
  }

  @Test
  void aLedgerOfALaterVersionIsRefusedAndNothingIsTouched() throws IOException {
    Path head = folder.resolve("journal/head.json");
    Files.write(
        head,
        SealedJson.seal("{\"format\":" + (Head.FORMAT + 1) + ",\"finished\":2,\"begun\":null}"));
    byte[] before = Files.readAllBytes(KeptLedger.database(folder));

    LedgerException e = assertThrows(LedgerException.class, () -> Ledger.open(folder, inbox));

    assertEquals(
        "This ledger was written by a newer Rickyard; use that version for this office.",
        e.getMessage());
    assertTrue(Arrays.equals(before, Files.readAllBytes(KeptLedger.database(folder))));
  }

  @Test
  void theHeadsFormatIsTheNumberOfTheLastMigration() throws IOException {
    try (var migrations = Files.list(Path.of("src/main/resources/db/migration"))) {
      int last =
          migrations
              .map(f -> f.getFileName().toString().replaceAll("V(\\d+)__.*", "$1"))
              .mapToInt(Integer::parseInt)
              .max()
              .orElseThrow();
      assertEquals(last, Head.FORMAT);
    }
  }
}
