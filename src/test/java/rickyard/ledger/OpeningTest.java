package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/** What an opening cleans up, keeps of an earlier version, puts back and says. */
class OpeningTest {
  @TempDir static Path shared;

  @TempDir Path temp;
  private Path folder = Path.of("");
  private final KeptLedger.Inbox inbox = new KeptLedger.Inbox();

  @BeforeAll
  static void twoMorningsAreFinishedAndOneIsUnderWay() {
    KeptLedger.make(shared);
  }

  @BeforeEach
  void copyThem() throws IOException {
    folder = temp.resolve("ledger");
    if (TestIndex.isOnServer()) {
      KeptLedger.make(TestIndex.place(folder));
      return;
    }
    BuiltJar.copy(shared, folder);
    // As after a kill: the database alone tells what it is.
    ClosedMark.lift(folder.resolve("db"));
  }

  private Ledger open() {
    return Ledger.open(TestIndex.place(folder), inbox);
  }

  private void inDatabase(String sql) throws SQLException {
    TestIndex.change(folder, sql);
  }

  @Test
  void aNewOfficeOpensWithoutAWord() {
    try (Ledger ledger = Ledger.open(TestIndex.place(temp.resolve("new")), inbox)) {
      assertEquals(0, ledger.mornings().count());
      assertEquals(Optional.empty(), ledger.mornings().lastFinished());
      assertEquals(Optional.empty(), ledger.mornings().lastJournal());
      assertEquals(Optional.empty(), ledger.mornings().unfinished());
      assertFalse(ledger.mornings().isFinished(1));
    }
    assertEquals(List.of(), inbox.said());
  }

  @Test
  void aLedgerThatIsWholeOpensWithoutAWord() {
    open().close();

    assertEquals(List.of(), inbox.said());
  }

  @Test
  void whatAKilledRunLeftHalfWrittenIsWipedAway() throws IOException {
    List<Path> left =
        List.of(
            folder.resolve("a" + DurableFiles.TEMPORARY),
            folder.resolve("journal/3.json" + DurableFiles.TEMPORARY),
            folder.resolve("db/closed.sha256" + DurableFiles.TEMPORARY),
            folder.resolve("originals/x" + DurableFiles.TEMPORARY),
            folder.resolve("tmp/deep/half"));
    for (Path file : left) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, "half");
    }

    open().close();

    left.forEach(file -> assertFalse(Files.exists(file), file::toString));
  }

  @Test
  void aLedgerOfAnEarlierVersionIsKeptWhicheverWayItIsOpened() throws IOException {
    Path older = temp.resolve("older");
    BuiltJar.copy(folder, older);
    for (Path ledger : List.of(folder, older)) {
      new Journal(ledger.resolve("journal")).write(new Head(Head.FORMAT - 1, 2, Optional.empty()));
    }

    open().close();
    Ledger.rebuild(TestIndex.place(older), inbox, "is put aside as asked").close();

    assertTrue(Files.exists(folder.resolve("before-" + Head.FORMAT + "/journal/2.json")));
    assertTrue(Files.exists(older.resolve("before-" + Head.FORMAT + "/journal/2.json")));
  }

  @Test
  void aDatabaseOfALaterVersionWithoutAHeadIsLeftAlone() throws Exception {
    inDatabase("UPDATE flyway_schema_history SET version = '9' WHERE version = '3'");
    Files.delete(folder.resolve("journal/head.json"));

    LedgerException thrown = assertThrows(LedgerException.class, () -> open().close());

    assertTrue(thrown.isNewer());
    assertFalse(Files.exists(folder.resolve("set-aside")));
  }

  @Test
  void originalsWithoutJournalAndDatabaseAreNoNewOffice() throws IOException {
    DurableFiles.remove(folder.resolve("journal"));
    TestIndex.lose(folder);

    assertThrows(LedgerException.class, () -> open().close());

    for (int n = 1; n <= 6; n++) {
      inbox.with(KeptLedger.document(n));
    }
    try (Ledger ledger = open()) {
      assertEquals(0, ledger.mornings().count());
    }
    assertEquals(
        List.of(
            "rebuild  the ledger's database is missing; made again from originals and journal"
                + " (0 mornings)"),
        inbox.said());
  }

  @Test
  void aJournalWithoutDatabaseIsNoNewOffice() throws IOException {
    DurableFiles.remove(folder.resolve("originals"));
    TestIndex.lose(folder);
    for (int n = 1; n <= 4; n++) {
      inbox.with(KeptLedger.document(n));
    }

    open().close();

    assertTrue(inbox.said().get(0).startsWith("rebuild  the ledger's database is missing"));
  }

  @Test
  void aMorningThatTheDatabaseLacksIsPutBackAndCounted() throws Exception {
    inDatabase("DELETE FROM arrival WHERE morning = 2");
    inDatabase("DELETE FROM morning WHERE number = 2");

    try (Ledger ledger = open()) {
      assertEquals(KeptLedger.arrivals(2), ledger.mornings().arrivals(2));
      assertEquals(KeptLedger.morning(2, true), ledger.mornings().lastFinished().orElseThrow());
    }
    assertEquals(
        List.of("repair   the ledger's database lacked 1 morning; put back from the journal"),
        inbox.said());
  }

  @Test
  void aSecondRebuildKeepsTheNewerDatabaseAsideAndNoProbe() throws IOException {
    assumeFalse(TestIndex.isOnServer(), "nothing is kept aside there");
    Ledger.rebuild(folder, inbox, "is put aside as asked").close();
    Files.writeString(folder.resolve("set-aside/db/mark"), "of the first");

    Ledger.rebuild(folder, inbox, "is put aside as asked").close();

    assertFalse(Files.exists(folder.resolve("set-aside/db/mark")));
    assertTrue(Files.exists(folder.resolve("set-aside/db/rickyard.mv.db")));
    assertFalse(Files.exists(folder.resolve("tmp/probe")));
  }

  @Test
  void aRebuildWipesWhatAKilledRunLeftToo() throws IOException {
    Path left = Files.writeString(folder.resolve("a" + DurableFiles.TEMPORARY), "half");

    Ledger.rebuild(TestIndex.place(folder), inbox, "is put aside as asked").close();

    assertFalse(Files.exists(left));
  }

  @Test
  void aRowThatIsNotWhatWasWrittenIsFoundAndEverythingMadeAnew() throws Exception {
    inDatabase("UPDATE morning SET content = 'other' WHERE number = 1");

    try (Ledger ledger = open()) {
      assertEquals(KeptLedger.morning(2, true), ledger.mornings().lastFinished().orElseThrow());
    }
    assertEquals(1, inbox.said().size(), inbox.said().toString());
    assertTrue(inbox.said().get(0).startsWith("rebuild  the ledger's database is damaged"));
    inbox.said().clear();
    open().close();
    assertEquals(List.of(), inbox.said(), "and the new one is sound");
  }

  @Test
  void anInventoryThatIsNotWhatWasWrittenIsFoundToo() throws Exception {
    inDatabase("UPDATE arrival SET bytes = bytes + 1 WHERE morning = 1 AND seq = 0");

    open().close();

    assertEquals(1, inbox.said().size(), inbox.said().toString());
    assertTrue(inbox.said().get(0).startsWith("rebuild  the ledger's database is damaged"));
  }

  @Test
  void aMorningThatTheJournalDoesNotKnowIsDropped() {
    MorningRow strange = KeptLedger.morning(9, true);
    DatabaseHome home = DatabaseHome.of(TestIndex.place(folder), inbox::say);
    try (Database database = home.open()) {
      new MorningIndex(database).put(strange, "0".repeat(64), List.of(KeptLedger.arrival(9)));
    } finally {
      home.release();
    }

    try (Ledger ledger = open()) {
      assertFalse(ledger.mornings().isIndexed(strange));
      assertEquals(List.of(), ledger.mornings().arrivals(9));
      assertEquals(2, ledger.mornings().count());
    }
  }

  @Test
  void anotherMorningOfTheSameNumberIsNotTheOneInTheJournal() {
    try (Ledger ledger = open()) {
      MorningRow there = KeptLedger.morning(2, true);
      MorningRow other =
          new MorningRow(2, there.asOf(), "another identity", there.content(), there.finished());

      assertTrue(ledger.mornings().isJournaled(there));
      assertFalse(ledger.mornings().isJournaled(other));
    }
  }

  @Test
  void aRefusedOpeningLeavesTheDatabaseClosed() throws IOException {
    assumeFalse(TestIndex.isOnServer(), "a server looks after its files");
    DurableFiles.remove(folder.resolve("originals"));

    assertThrows(LedgerException.class, () -> open().close());

    assertTrue(Files.exists(folder.resolve("db/closed.sha256")), "closed and marked");
  }

  @Test
  void whatIsBeingMadeIsForTheOwnerAlone() throws IOException {
    assumeTrue(Files.getFileStore(temp).supportsFileAttributeView("posix"));
    DurableFiles.remove(folder.resolve("tmp"));

    open().close();

    assertEquals(
        "rwx------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("tmp"))));
  }

  @Test
  void aMorningUnderWayKeepsItsPlaceInventoryAndSteps() {
    try (Ledger ledger = open()) {
      Mornings mornings = ledger.mornings();
      assertEquals(2, mornings.count());
      assertTrue(mornings.isFinished(2));
      assertFalse(mornings.isFinished(3));
      assertEquals(
          new Mornings.Unfinished(KeptLedger.morning(3, false), "out"),
          mornings.unfinished().orElseThrow());
      assertTrue(mornings.isIndexed(KeptLedger.morning(3, false)));
      assertFalse(mornings.isJournaled(KeptLedger.morning(3, false)));
      assertTrue(mornings.isJournaled(KeptLedger.morning(2, true)));
      assertEquals(Optional.of(KeptLedger.entry(2)), mornings.lastJournal());
      assertEquals(
          Optional.of("step 3"), ledger.results().step(3, "identity-3", "advice", String.class));
    }
  }

  @Test
  void aMorningBegunAnewForgetsTheStepsOfTheAbandonedOne() {
    try (Ledger ledger = open()) {
      ledger
          .mornings()
          .begin(KeptLedger.morning(3, false), List.of(KeptLedger.arrival(9)), "elsewhere");

      assertEquals(List.of(KeptLedger.arrival(9)), ledger.mornings().arrivals(3));
      assertEquals("elsewhere", ledger.mornings().unfinished().orElseThrow().out());
      assertEquals(
          Optional.empty(), ledger.results().step(3, "identity-3", "advice", String.class));
    }
  }

  @Test
  void theInventoryOfAnUnfinishedMorningMayBeReplacedAndOfAFinishedOneNot() {
    try (Ledger ledger = open()) {
      ledger.mornings().replaceArrivals(3, List.of(KeptLedger.arrival(9)));
      ledger.mornings().replaceArrivals(2, List.of(KeptLedger.arrival(9)));
      ledger.mornings().replaceArrivals(7, List.of(KeptLedger.arrival(9)));

      assertEquals(List.of(KeptLedger.arrival(9)), ledger.mornings().arrivals(3));
      assertEquals(KeptLedger.arrivals(2), ledger.mornings().arrivals(2));
      assertEquals(List.of(), ledger.mornings().arrivals(7));
      assertEquals(KeptLedger.arrival(3), ledger.mornings().arrival(2, 2));
    }
  }

  @Test
  void aMorningWithoutJournalIsNeverFinished() {
    try (Ledger ledger = open()) {
      LedgerException thrown =
          assertThrows(LedgerException.class, () -> ledger.mornings().finish(3));

      assertEquals("Morning 3 has no journal.", thrown.getMessage());
      assertEquals(2, ledger.mornings().count());
    }
  }

  @Test
  void aFinishedMorningForgetsTheStepsOfThoseBeforeAndKeepsItsOwn() {
    try (Ledger ledger = open()) {
      ledger.results().keepStep(2, "identity-2", "advice", "step 2");
      ledger.journal().write(KeptLedger.entry(3));
      ledger.mornings().finish(3);

      assertEquals(
          Optional.empty(), ledger.results().step(2, "identity-2", "advice", String.class));
      assertEquals(
          Optional.of("step 3"), ledger.results().step(3, "identity-3", "advice", String.class));
      assertEquals(3, ledger.mornings().count());
    }
  }

  @Test
  void aFileWithAProblemWasNeverSeen() {
    ArrivalRow bad = new ArrivalRow("bad.csv", "", 0, "unreadable", "cannot be read");
    try (Ledger ledger = open()) {
      ledger.mornings().replaceArrivals(3, List.of(bad, KeptLedger.arrival(9)));
      ledger.journal().write(withArrivals(3, List.of(bad, KeptLedger.arrival(9))));
      ledger.originals().keep(KeptLedger.arrival(9).sha256(), KeptLedger.document(9));
      ledger.mornings().finish(3);

      List<Mornings.Seen> seen = ledger.mornings().seenBefore(4);
      assertEquals(2 + 4 + 1, seen.size());
      assertEquals(
          new Mornings.Seen(
              KeptLedger.arrival(9).sha256(), "report-9.csv", KeptLedger.DAY.plusDays(3)),
          seen.get(6));
      assertEquals(2, ledger.mornings().seenBefore(2).size());
      assertEquals(5, ledger.mornings().documents().size());
    }
    open().close();
  }

  private static JournalEntry withArrivals(int number, List<ArrivalRow> arrivals) {
    JournalEntry e = KeptLedger.entry(number);
    return new JournalEntry(
        e.format(),
        number,
        e.asOf(),
        e.identity(),
        e.content(),
        e.version(),
        arrivals,
        e.registers(),
        e.state());
  }
}
