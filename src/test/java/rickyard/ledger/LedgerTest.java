package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
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
    try (Ledger ledger = Ledger.open(TestIndex.place(folder), Rescue.none())) {
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
    try (Ledger ledger = Ledger.open(TestIndex.place(folder), Rescue.none())) {
      assertEquals(
          Optional.of(new MorningRow(1, DAY, "id-1", "content-1", true)),
          ledger.mornings().lastFinished());
      assertEquals(List.of(ARRIVAL), ledger.mornings().arrivals(1));
      assertEquals(ARRIVAL, ledger.mornings().arrival(1, 0));
      assertEquals(
          Optional.of("what it says"), ledger.results().reading(HASH, "reader-1", String.class));
      assertEquals(
          Optional.of("a result"), ledger.results().step(1, "id-1", "settled", String.class));
      assertEquals(List.of(HASH), hashes(ledger, 2));
      assertEquals(List.of(), hashes(ledger, 1));
    }
  }

  @Test
  void anotherReaderDoesNotSeeTheReading() {
    try (Ledger ledger = Ledger.open(TestIndex.place(folder), Rescue.none())) {
      assertTrue(ledger.results().hasReading(HASH, "reader-1"));
      assertFalse(ledger.results().hasReading(HASH, "reader-2"));
    }
  }

  @Test
  void aMorningThatWasBegunAndNotFinishedIsFound() {
    try (Ledger ledger = Ledger.open(TestIndex.place(folder), Rescue.none())) {
      ledger
          .mornings()
          .begin(new MorningRow(2, DAY, "id-2", "content-2", false), List.of(ARRIVAL), "out");
    }
    try (Ledger ledger = Ledger.open(TestIndex.place(folder), Rescue.none())) {
      MorningRow unfinished = ledger.mornings().unfinished().orElseThrow().morning();
      assertEquals(2, unfinished.number());
      assertTrue(ledger.mornings().isIndexed(unfinished));
      assertEquals(1, ledger.mornings().lastFinished().orElseThrow().number());
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
