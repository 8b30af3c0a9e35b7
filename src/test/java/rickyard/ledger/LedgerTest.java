package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final byte[] BYTES = "a report".getBytes(StandardCharsets.UTF_8);
  private static final String HASH = Originals.sha256(BYTES);
  private static final ArrivalRow ARRIVAL = new ArrivalRow("a.csv", HASH, BYTES.length, "", "");

  @TempDir Path folder;

  @BeforeEach
  void aMorningIsFinished() {
    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      ledger
          .mornings()
          .begin(new MorningRow(1, DAY, "id-1", "content-1", false), List.of(ARRIVAL), "out");
      ledger.originals().keep(HASH, BYTES);
      ledger.results().keepReading(HASH, "reader-1", "what it says");
      ledger.results().keepStep(1, "id-1", "settled", "a result");
      ledger.journal().write(entry(1));
      ledger.mornings().finish(1);
    }
  }

  private static JournalEntry entry(int number) {
    return new JournalEntry(
        JournalEntry.FORMAT,
        number,
        DAY.toString(),
        "id-" + number,
        "content-" + number,
        "test",
        List.of(ARRIVAL),
        new TreeMap<>(),
        "{}");
  }

  private static List<String> hashes(Ledger ledger, int before) {
    return ledger.mornings().seenBefore(before).stream().map(Mornings.Seen::sha256).toList();
  }

  @Test
  void aFinishedMorningIsRememberedWithItsInventoryReadingsAndResults() {
    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      assertEquals(
          Optional.of(new MorningRow(1, DAY, "id-1", "content-1", true)), ledger.mornings().lastFinished());
      assertEquals(List.of(ARRIVAL), ledger.mornings().arrivals(1));
      assertEquals(ARRIVAL, ledger.mornings().arrival(1, 0));
      assertEquals(Optional.of("what it says"), ledger.results().reading(HASH, "reader-1", String.class));
      assertEquals(Optional.of("a result"), ledger.results().step(1, "id-1", "settled", String.class));
      assertEquals(List.of(HASH), hashes(ledger, 2));
      assertEquals(List.of(), hashes(ledger, 1));
    }
  }

  @Test
  void anotherReaderDoesNotSeeTheReading() {
    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      assertTrue(ledger.results().hasReading(HASH, "reader-1"));
      assertFalse(ledger.results().hasReading(HASH, "reader-2"));
    }
  }

  @Test
  void aDatabaseThatIsGoneIsIndexedAgainFromTheJournal() throws IOException {
    Files.delete(folder.resolve("db").resolve("rickyard.mv.db"));

    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      assertEquals("id-1", ledger.mornings().lastFinished().orElseThrow().identity());
      assertEquals(List.of(ARRIVAL), ledger.mornings().arrivals(1));
      assertEquals(List.of(HASH), hashes(ledger, 2));
    }
  }

  @Test
  void aDatabaseThatIsDamagedIsPutAsideAndIndexedAgain() throws IOException {
    Path file = folder.resolve("db").resolve("rickyard.mv.db");
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, java.util.Arrays.copyOf(bytes, 200));

    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      assertEquals("id-1", ledger.mornings().lastFinished().orElseThrow().identity());
    }
    assertTrue(Files.isDirectory(folder.resolve("set-aside/db")));
  }

  @Test
  void aMorningThatWasBegunAndNotFinishedIsFound() {
    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      ledger
          .mornings()
          .begin(new MorningRow(2, DAY, "id-2", "content-2", false), List.of(ARRIVAL), "out");
    }
    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      MorningRow unfinished = ledger.mornings().unfinished().orElseThrow().morning();
      assertEquals(2, unfinished.number());
      assertTrue(ledger.mornings().isIndexed(unfinished));
      assertEquals(1, ledger.mornings().lastFinished().orElseThrow().number());
    }
  }

  @Test
  void aDamagedJournalEntryIsNamedInAPlainSentence() throws IOException {
    Files.writeString(folder.resolve("journal").resolve("2.json"), "{\"format\":1,");

    LedgerException e = assertThrows(LedgerException.class, () -> Ledger.open(folder, Rescue.none()).close());

    assertEquals(
        "The journal file "
            + folder.resolve("journal").resolve("2.json")
            + " is damaged. Put it back from a backup of the ledger, then run the same command"
            + " again.",
        e.getMessage());
  }

  @Test
  void aDamagedOriginalIsNamedAndNeverUsed() throws IOException {
    Files.writeString(folder.resolve("originals").resolve(HASH), "something else");

    try (Ledger ledger = Ledger.open(folder, Rescue.none())) {
      LedgerException e = assertThrows(LedgerException.class, () -> ledger.originals().read(HASH));
      assertTrue(String.valueOf(e.getMessage()).contains(HASH + " is damaged"), e::toString);
    }
  }

  @Test
  void aSecondHolderIsTurnedAwayUntilTheFirstLetsGo() {
    try (OfficeLock lock = OfficeLock.take(folder).orElseThrow()) {
      assertEquals(Optional.empty(), OfficeLock.take(folder));
    }
    OfficeLock.take(folder).orElseThrow().close();
  }
}
