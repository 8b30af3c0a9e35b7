package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;

/** What a run and its workers may do at the same time; without a server nothing of it runs. */
class SharingTest {
  private static final byte[] BYTES = "Lot,TAR-2".getBytes(StandardCharsets.UTF_8);
  private static final String HASH = Originals.sha256(BYTES);
  private static final Task TASK = new Task("r1", "p", "t", "no ocr", 3, "2026-03-16");
  private static final long PART = 7;

  @TempDir Path temp;
  private Path folder = Path.of("");
  private Optional<Ledger> run = Optional.empty();

  @BeforeEach
  void aRunHoldsTheOffice() {
    assumeTrue(TestIndex.isOnServer(), "rickyard.test.postgresql names no server");
    folder = temp.resolve("ledger");
    run = Optional.of(Ledger.open(TestIndex.place(folder), new KeptLedger.Inbox()));
    ledger().originals().keep(HASH, BYTES);
  }

  @AfterEach
  void end() {
    run.ifPresent(Ledger::close);
  }

  private Ledger ledger() {
    return run.orElseThrow();
  }

  private Sharing sharing() {
    return ledger().sharing().orElseThrow();
  }

  private void handOut() {
    sharing().open(TASK, List.of(HASH), ledger().originals());
  }

  private WorkerLedger worker() {
    return WorkerLedger.find(TestIndex.address(folder).orElseThrow(), Optional.of(folder), 1)
        .orElseThrow();
  }

  @Test
  void aWorkerSeesWhatIsHandedOutOnlyWhileItIsLetIn() {
    try (WorkerLedger worker = worker()) {
      assertEquals(Optional.empty(), worker.task());
      handOut();

      assertEquals(Optional.of(TASK), worker.task());
      assertArrayEquals(BYTES, worker.document(HASH));
      assertEquals(1, sharing().left());

      sharing().close(line -> {});
      assertEquals(Optional.empty(), worker.task());
      assertThrows(LedgerException.class, () -> worker.document(HASH));
    }
  }

  @Test
  void aDocumentThatWasAlteredOnTheWayIsNotRead() {
    handOut();
    try (WorkerLedger worker = worker()) {
      new JdbcTemplate(worker.dataSource()).update("UPDATE worker_document SET content = 'x'");

      LedgerException refusal = assertThrows(LedgerException.class, () -> worker.document(HASH));

      assertEquals("The original " + HASH + " was not handed over whole.", refusal.getMessage());
    }
  }

  @Test
  void workersAreCountedByWhatTheyReadAndGoneWhenTheyAreClosed() throws Exception {
    try (WorkerLedger one = worker();
        WorkerLedger two = worker()) {
      one.register("r1");
      two.register("r2");
      assertEquals(new Sharing.Workers(2, 1), sharing().workers("r1"));

      two.register("r1");
      assertEquals(new Sharing.Workers(2, 2), sharing().workers("r1"));
      assertEquals(new Sharing.Workers(2, 0), sharing().workers("r2"));
    }
    // The server may still be ending what was closed.
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
    while (sharing().workers("r1").all() > 0 && System.nanoTime() < until) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
    assertEquals(new Sharing.Workers(0, 0), sharing().workers("r1"));
  }

  @Test
  void aRunThatWantsNobodyInsideWaitsForThePartAndTheWorkerSeesIt() throws Exception {
    handOut();
    try (WorkerLedger worker = worker();
        Channel channel = worker.channel(1)) {
      Hold hold = channel.hold();
      CompletableFuture<Void> closing =
          new TransactionTemplate(channel.transactions())
              .execute(
                  t -> {
                    assertTrue(hold.isInside());
                    hold.take(PART);
                    inDocument(worker, hold);
                    CompletableFuture<Void> waits =
                        CompletableFuture.runAsync(() -> sharing().close(line -> {}));
                    awaitRefusal(worker, hold);
                    assertFalse(waits.isDone(), "the part is still in hand");
                    return waits;
                  });

      closing.get(10, TimeUnit.SECONDS);
      assertFalse(isInside(channel, hold), "the gate is shut");
    }
  }

  private static boolean isInside(Channel channel, Hold hold) {
    return Boolean.TRUE.equals(
        new TransactionTemplate(channel.transactions()).execute(t -> hold.isInside()));
  }

  private static void inDocument(WorkerLedger worker, Hold hold) {
    new TransactionTemplate(worker.transactions())
        .executeWithoutResult((TransactionStatus t) -> hold.require(PART));
  }

  private static void awaitRefusal(WorkerLedger worker, Hold hold) {
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
    while (System.nanoTime() < until) {
      try {
        inDocument(worker, hold);
      } catch (LedgerException refused) {
        return;
      }
    }
    throw new AssertionError("no document was refused");
  }

  @Test
  void whatLostItsMessageWritesNoDocumentMore() {
    handOut();
    try (WorkerLedger worker = worker();
        Channel channel = worker.channel(1)) {
      Hold hold = channel.hold();
      TransactionTemplate part = new TransactionTemplate(channel.transactions());
      part.executeWithoutResult(
          t -> {
            assertTrue(hold.isInside());
            assertDoesNotThrow(() -> inDocument(worker, hold));
          });

      LedgerException refusal = assertThrows(LedgerException.class, () -> inDocument(worker, hold));

      assertEquals(
          "The part was given back; another worker or the run has it.", refusal.getMessage());
    }
  }

  @Test
  void whoTakesAPartNextWaitsForTheDocumentOfTheOneBefore() throws Exception {
    handOut();
    try (WorkerLedger one = worker();
        WorkerLedger two = worker();
        Channel first = one.channel(1);
        Channel second = two.channel(1)) {
      Hold before = first.hold();
      CompletableFuture<Void> taking =
          new TransactionTemplate(first.transactions())
              .execute(
                  t -> {
                    before.isInside();
                    return new TransactionTemplate(one.transactions())
                        .execute(
                            document -> {
                              before.require(PART);
                              CompletableFuture<Void> next =
                                  CompletableFuture.runAsync(() -> second.hold().take(PART));
                              assertThrows(
                                  java.util.concurrent.TimeoutException.class,
                                  () -> next.get(300, TimeUnit.MILLISECONDS));
                              return next;
                            });
                  });

      taking.get(10, TimeUnit.SECONDS);
    }
  }

  @Test
  void theNextRunFindsNothingOfWhatWasHandedOut() {
    handOut();
    ledger().close();
    run = Optional.of(Ledger.open(TestIndex.place(folder), new KeptLedger.Inbox()));
    handOut();

    assertEquals(1, sharing().left());
    ledger().close();
    run = Optional.of(Ledger.open(TestIndex.place(folder), new KeptLedger.Inbox()));
    assertEquals(0, sharing().left());
  }
}
