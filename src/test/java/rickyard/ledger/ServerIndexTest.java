package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds only where the index is on a server; without one nothing of it runs. */
class ServerIndexTest {
  @TempDir Path temp;
  private Path folder = Path.of("");
  private final KeptLedger.Inbox inbox = new KeptLedger.Inbox();

  @BeforeEach
  void twoMorningsAreFinishedAndOneIsUnderWay() {
    assumeTrue(TestIndex.isOnServer(), "rickyard.test.postgresql names no server");
    folder = temp.resolve("ledger");
    KeptLedger.make(TestIndex.place(folder));
  }

  private String schema() {
    return TestIndex.schema(folder);
  }

  private Ledger open() {
    return Ledger.open(TestIndex.place(folder), inbox);
  }

  private String refusal(LedgerPlace place) {
    return String.valueOf(
        assertThrows(LedgerException.class, () -> Ledger.open(place, inbox).close()).getMessage());
  }

  private List<String> ask(String sql) {
    List<String> answers = new ArrayList<>();
    try (Connection connection =
            TestIndex.address(folder).orElseThrow().source(schema()).getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        answers.add(rows.getString(1));
      }
      return answers;
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void theListOfWhatIsMadeAnewIsWhatTheMigrationsMake() {
    TreeSet<String> listed = new TreeSet<>(ServerSchema.TABLES);
    listed.add("rickyard_office");

    assertEquals(
        List.copyOf(listed),
        ask(
            "SELECT tablename FROM pg_tables WHERE schemaname = current_schema() ORDER BY"
                + " tablename COLLATE \"C\""));
    assertEquals(
        List.copyOf(new TreeSet<>(ServerSchema.SEQUENCES)),
        ask(
            "SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace WHERE"
                + " n.nspname = current_schema() AND c.relkind = 'S' AND NOT EXISTS (SELECT 1 FROM"
                + " pg_depend d WHERE d.objid = c.oid AND d.deptype = 'i') ORDER BY 1"));
  }

  @Test
  void aLostSchemaIsFoundAndMadeAgainFromTheJournal() {
    TestIndex.lose(folder);

    try (Ledger ledger = open()) {
      assertEquals(KeptLedger.arrivals(2), ledger.mornings().arrivals(2));
      assertEquals(List.of(), KeptLedger.wrongResults(ledger));
    }
    assertEquals(
        List.of(
            "rebuild  the ledger's database is missing; made again from originals and journal"
                + " (2 mornings)"),
        inbox.said());
  }

  @Test
  void aRowThatWasChangedIsFoundByItsSealAndMadeAgain() throws SQLException {
    TestIndex.change(folder, "UPDATE arrival SET path = 'other.csv' WHERE morning = 1");

    try (Ledger ledger = open()) {
      assertEquals(KeptLedger.arrivals(1), ledger.mornings().arrivals(1));
    }
    assertTrue(inbox.said().get(0).startsWith("rebuild  the ledger's database is damaged"));
  }

  @Test
  void aTableThatIsGoneIsMadeAgain() {
    TestIndex.onServer("DROP TABLE " + schema() + ".reading");

    try (Ledger ledger = Ledger.rebuild(TestIndex.place(folder), inbox, "is put aside as asked")) {
      ledger.results().keepReading("h", "r", "x");
    }
  }

  @Test
  void aRebuildLeavesWhatOthersKeepBesideIt() {
    TestIndex.onServer(
        "CREATE TABLE " + schema() + ".of_others (x INTEGER)",
        "INSERT INTO " + schema() + ".of_others VALUES (7)");

    Ledger.rebuild(TestIndex.place(folder), inbox, "is put aside as asked").close();

    assertEquals(List.of("7"), ask("SELECT x FROM of_others"));
    assertEquals(
        List.of(
            "rebuild  the ledger's database is put aside as asked; made again from originals and"
                + " journal (2 mornings)"),
        inbox.said());
  }

  @Test
  void aRebuildThatOthersStandInTheWayOfSaysSo() {
    TestIndex.onServer(
        "CREATE VIEW " + schema() + ".view_of_others AS SELECT * FROM " + schema() + ".morning");

    LedgerException e =
        assertThrows(
            LedgerException.class,
            () -> Ledger.rebuild(TestIndex.place(folder), inbox, "is put aside as asked"));

    assertTrue(
        e.getMessage().startsWith("Something else uses or depends on Rickyard's tables in"),
        e::getMessage);
    open().close();
  }

  @Test
  void theSchemaOfAnotherOfficeIsRefusedAndNotTouched() {
    Path other = temp.resolve("other");
    DatabaseAddress taken = TestIndex.withSchema(TestIndex.url(), schema());

    String refusal = refusal(new LedgerPlace(other, java.util.Optional.of(taken)));

    assertTrue(refusal.startsWith("The schema " + schema() + " in "), refusal);
    assertTrue(refusal.contains("belongs to another office"), refusal);
    assertEquals(List.of("3"), ask("SELECT COUNT(*) FROM morning"));
  }

  @Test
  void aSchemaWithTablesOfOthersIsRefusedAndNotTouched() {
    String schema = schema().replace("t_", "o_");
    DatabaseAddress taken = TestIndex.withSchema(TestIndex.url(), schema);
    TestIndex.onServer(
        "CREATE SCHEMA " + schema, "CREATE TABLE " + schema + ".morning (tea INTEGER)");

    String refusal = refusal(new LedgerPlace(temp.resolve("o"), java.util.Optional.of(taken)));

    assertTrue(refusal.contains("holds what is not this office's"), refusal);
    TestIndex.onServer("SELECT tea FROM " + schema + ".morning");
  }

  @Test
  void aDatabaseOfALaterVersionIsRefusedWhicheverWayItIsOpened() throws SQLException {
    TestIndex.change(folder, "UPDATE flyway_schema_history SET version = '9' WHERE version = '3'");

    assertThrows(LedgerException.class, () -> open().close());
    LedgerException e =
        assertThrows(
            LedgerException.class,
            () -> Ledger.rebuild(TestIndex.place(folder), inbox, "is put aside as asked"));

    assertTrue(e.isNewer());
    assertEquals(List.of("3"), ask("SELECT COUNT(*) FROM morning"));
  }

  @Test
  void aSecondMachineIsTurnedAwayUntilTheFirstLetsGo() {
    try (Ledger first = open()) {
      LedgerException e = assertThrows(LedgerException.class, () -> open().close());

      assertTrue(e.isHeld());
      assertTrue(e.getMessage().startsWith("Another run, perhaps on another machine"));
      assertEquals(2, first.mornings().count());
    }
    open().close();
  }

  @Test
  void aSessionThatEndedIsNoticedBeforeAnythingIsPublished() {
    try (Ledger ledger = open()) {
      TestIndex.endSessions();

      LedgerException e = assertThrows(LedgerException.class, ledger::checkpoint);

      assertFalse(e.isHeld());
      assertTrue(e.getMessage().startsWith("The connection to the PostgreSQL database"));
      assertTrue(ledger.lost().isPresent());
    }
    try (Ledger ledger = open()) {
      assertEquals(java.util.Optional.empty(), ledger.lost());
    }
    assertEquals(List.of(), inbox.said());
  }

  @Test
  void anOfficeThatMovesToAnotherServerTakesItsMorningsAlong() {
    String schema = schema().replace("t_", "n_");
    DatabaseAddress there = TestIndex.withSchema(TestIndex.url(), schema);
    Path moved = temp.resolve("file");
    KeptLedger.make(moved);

    try (Ledger ledger = Ledger.open(new LedgerPlace(moved, java.util.Optional.of(there)), inbox)) {
      assertEquals(KeptLedger.arrivals(2), ledger.mornings().arrivals(2));
    }
    try (Ledger back = Ledger.open(moved, inbox)) {
      assertEquals(KeptLedger.arrivals(2), back.mornings().arrivals(2));
    }
  }
}
