package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far the journal goes where its head, its last file or the index is lost. */
class RepairTest {
  private final LedgerException trouble = new LedgerException("the last file is no good");

  @TempDir Path folder;
  private final KeptLedger.Inbox inbox = new KeptLedger.Inbox();
  private Journal journal = new Journal(Path.of(""));
  private Originals originals = new Originals(Path.of(""), inbox);
  private Repair repair = new Repair(Path.of(""), journal, originals, inbox);

  @BeforeEach
  void twoMornings() {
    journal = new Journal(folder.resolve("journal"));
    originals = new Originals(folder.resolve("originals"), inbox);
    repair = new Repair(folder, journal, originals, inbox);
    journal.write(KeptLedger.entry(1));
    journal.write(KeptLedger.entry(2));
    for (int n = 1; n <= 4; n++) {
      originals.keep(KeptLedger.arrival(n).sha256(), KeptLedger.document(n));
    }
  }

  private static SortedMap<Integer, MorningIndex.Row> rows(MorningRow... mornings) {
    SortedMap<Integer, MorningIndex.Row> rows = new TreeMap<>();
    for (MorningRow morning : mornings) {
      rows.put(morning.number(), new MorningIndex.Row(morning, "", ""));
    }
    return rows;
  }

  private Survey sound() {
    return journal.survey(Optional.empty());
  }

  private Survey withTail() {
    return new Survey(sound().digests(), Optional.of(trouble));
  }

  private void keepOriginal(int n) {
    originals.keep(KeptLedger.arrival(n).sha256(), KeptLedger.document(n));
  }

  private static Head begun(int finished) {
    MorningRow m = KeptLedger.morning(finished + 1, false);
    return Head.of(finished)
        .withBegun(new Head.Begun(m.number(), m.asOf().toString(), m.identity(), m.content(), ""));
  }

  @Test
  void aLostHeadIsReadOffTheIndexWithTheMorningUnderWay() {
    assertEquals(
        begun(2),
        repair.headOf(
            rows(
                KeptLedger.morning(1, true),
                KeptLedger.morning(2, true),
                KeptLedger.morning(3, false)),
            sound()));
    assertEquals(begun(0), repair.headOf(rows(KeptLedger.morning(1, false)), sound()));
    assertEquals(List.of(), inbox.said());
  }

  @Test
  void aMorningUnderWayThatIsNotTheNextIsNone() {
    assertEquals(
        Head.of(2),
        repair.headOf(rows(KeptLedger.morning(1, true), KeptLedger.morning(5, false)), sound()));
  }

  @Test
  void withoutAMorningUnderWayTheFurtherOfIndexAndJournalCounts() {
    assertEquals(Head.of(2), repair.headOf(rows(KeptLedger.morning(1, true)), sound()));
    assertEquals(
        Head.of(3),
        repair.headOf(
            rows(
                KeptLedger.morning(1, true),
                KeptLedger.morning(2, true),
                KeptLedger.morning(3, true)),
            sound()));
    assertEquals(Head.of(2), repair.headOf(rows(), sound()));
  }

  @Test
  void aHeadThatIsThereAndNoGoodIsSaidToBeWrittenAgain() throws IOException {
    Files.writeString(folder.resolve("journal/head.json"), "x");

    repair.headOf(rows(), sound());
    repair.headWithoutIndex(sound());

    String said = "repair   journal/head.json was damaged; written again";
    assertEquals(List.of(said, said), inbox.said());
  }

  @Test
  void withoutHeadAndIndexTheJournalsFilesCount() {
    assertEquals(Head.of(2), repair.headWithoutIndex(sound()));
    assertEquals(List.of(), inbox.said());
  }

  @Test
  void anOriginalThatNoFileNamesShowsThatAFileIsLost() {
    keepOriginal(9);

    LedgerException thrown =
        assertThrows(LedgerException.class, () -> repair.headWithoutIndex(sound()));
    assertTrue(
        String.valueOf(thrown.getMessage())
            .contains(
                "hold a report that no journal file names ("
                    + KeptLedger.arrival(9).sha256()
                    + ")"),
        thrown::toString);

    inbox.with(KeptLedger.document(9));
    assertEquals(Head.of(2), repair.headWithoutIndex(sound()));
  }

  @Test
  void aBadLastFileIsOneMoreMorningWhateverItsOriginals() {
    keepOriginal(9);

    assertEquals(Head.of(3), repair.headWithoutIndex(withTail()));
  }

  @Test
  void aSoundJournalLeavesTheHeadUnlessItIsBehind() {
    assertSameHead(Head.of(2));
    assertSameHead(Head.of(5));
    assertSameHead(begun(1));
    assertEquals(Head.of(2), repair.tail(Head.of(1), sound()));
  }

  private void assertSameHead(Head head) {
    assertSame(head, repair.tail(head, sound()));
  }

  @Test
  void aBadLastFileIsPutAsideWhereNoReportIsLost() throws IOException {
    Survey survey = withTail();
    Files.writeString(journal.file(3), "bad");
    Files.writeString(journal.file(4), "worse");

    assertEquals(Head.of(2), repair.tail(Head.of(3), survey));

    assertEquals(List.of(1, 2), journal.numbers());
    assertEquals("bad", Files.readString(folder.resolve("set-aside/3.json")));
    assertEquals("worse", Files.readString(folder.resolve("set-aside/4.json")));
    assertEquals(
        List.of(
            "repair   journal/3.json was damaged or missing; all its reports are in the inbox, so"
                + " that morning is run again"),
        inbox.said());
  }

  @Test
  void aLastFileThatIsMissingNeedsNoPuttingAside() {
    assertEquals(Head.of(2), repair.tail(Head.of(3), withTail()));
    assertFalse(Files.exists(folder.resolve("set-aside")));
  }

  @Test
  void aBadLastFileThatMayNameALostReportIsTheTroubleItself() throws IOException {
    Files.writeString(journal.file(3), "bad");
    keepOriginal(9);

    assertSame(
        trouble, assertThrows(LedgerException.class, () -> repair.tail(Head.of(3), withTail())));
    assertTrue(Files.exists(journal.file(3)));

    inbox.with(KeptLedger.document(9));
    assertEquals(Head.of(2), repair.tail(Head.of(3), withTail()));
  }

  @Test
  void severalLostMorningsAreNotRunAgain() {
    assertSame(
        trouble, assertThrows(LedgerException.class, () -> repair.tail(Head.of(4), withTail())));
  }

  @Test
  void anOriginalIsKeptOnceUnderItsHash() throws IOException {
    String hash = KeptLedger.arrival(1).sha256();
    byte[] bytes = KeptLedger.document(1);

    assertTrue(originals.has(hash, bytes.length));
    assertFalse(originals.has(hash, bytes.length + 1));
    assertFalse(originals.has(KeptLedger.arrival(9).sha256(), bytes.length));
    Path file = folder.resolve("originals").resolve(hash);
    Files.setLastModifiedTime(file, java.nio.file.attribute.FileTime.fromMillis(1000));
    originals.keep(hash, bytes);
    assertEquals(1000, Files.getLastModifiedTime(file).toMillis());
    Files.writeString(file, "cut");
    originals.keep(hash, bytes);
    assertTrue(originals.has(hash, bytes.length));
  }

  @Test
  void onlyFilesNamedAfterAHashAreOriginalsInTheirOrder() throws IOException {
    Files.writeString(folder.resolve("originals/notes.txt"), "x");
    List<String> all = originals.all();

    assertEquals(4, all.size());
    assertEquals(all.stream().sorted().toList(), all);
    assertEquals(List.of(), new Originals(folder.resolve("none"), inbox).all());
  }

  @Test
  void aLedgerOfAnEarlierVersionIsKeptOnceBeforeItIsBroughtUpToDate() throws IOException {
    Files.createDirectories(folder.resolve("db"));
    Files.writeString(folder.resolve("db/file"), "old");
    Upgrade upgrade = new Upgrade(folder, journal, inbox);
    Path copy = folder.resolve("before-" + Head.FORMAT);

    upgrade.keepCopy(Optional.of(Head.of(2)));
    upgrade.keepCopy(Optional.empty());
    assertFalse(Files.exists(copy));

    upgrade.keepCopy(Optional.of(new Head(Head.FORMAT - 1, 2, Optional.empty())));
    assertEquals("old", Files.readString(copy.resolve("db/file")));
    assertTrue(Files.exists(copy.resolve("journal/2.json")));
    assertFalse(Files.exists(copy.resolve("originals")));
    assertEquals(
        List.of("upgrade  the ledger of an earlier version is kept in " + copy), inbox.said());

    Files.writeString(folder.resolve("db/file"), "new");
    upgrade.keepCopy(Optional.of(new Head(Head.FORMAT - 1, 2, Optional.empty())));
    assertEquals("old", Files.readString(copy.resolve("db/file")));
  }

  @Test
  void aLedgerWithoutHeadAndSealsIsOfAnEarlierVersion() throws IOException {
    for (int n = 1; n <= 2; n++) {
      String sealed = Files.readString(journal.file(n));
      Files.writeString(
          journal.file(n),
          sealed
              .replaceAll(",\"past\":\"[0-9a-f]*\",\"sha256\":\"[0-9a-f]{64}\"\\}$", "}")
              .replace("{\"format\":2", "{\"format\":1"));
    }
    Upgrade upgrade = new Upgrade(folder, journal, inbox);
    Path copy = folder.resolve("before-" + Head.FORMAT);
    upgrade.keepCopy(Optional.empty());
    assertFalse(Files.exists(copy), "without a database there is nothing to bring up to date");

    Files.createDirectories(folder.resolve("db"));
    Path head = Files.writeString(folder.resolve("journal/head.json"), "x");
    upgrade.keepCopy(Optional.empty());
    assertFalse(Files.exists(copy), "a head that is no good is still one");

    Files.delete(head);
    upgrade.keepCopy(Optional.empty());
    assertTrue(Files.exists(copy.resolve("journal/1.json")));
  }

  @Test
  void aFolderWithADatabaseAndNoMorningIsNotOfAnEarlierVersion() throws IOException {
    Path office = folder.resolve("office");
    Files.createDirectories(office.resolve("db"));

    new Upgrade(office, new Journal(office.resolve("journal")), inbox).keepCopy(Optional.empty());

    assertEquals(List.of(), inbox.said());
  }
}
