package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.dao.DataAccessException;
import rickyard.BuiltJar;

/**
 * A database file with bytes changed or cut off is found at the opening; one that no mark tells of,
 * because a run was killed, is found or says the same. The journal's truth never changes, a result
 * is right or counts as not there.
 */
class DatabaseDamagePropertyTest {
  private static final int ROUNDS = Integer.getInteger("rickyard.damage", 5);
  private static final int KINDS = 4;
  private static final long SEED = Long.getLong("rickyard.damage.seed", 20260316L);
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @TempDir Path folder;
  private int rebuilt;

  @Test
  void changedBytesAndCutsNeverChangeWhatTheLedgerSays() throws IOException {
    Path whole = folder.resolve("whole");
    KeptLedger.make(whole);
    byte[] file = Files.readAllBytes(KeptLedger.database(whole));
    Path undamaged = folder.resolve("undamaged");
    BuiltJar.copy(whole, undamaged);
    List<String> truth;
    try (Ledger ledger = Ledger.open(undamaged, Rescue.none())) {
      truth = KeptLedger.says(ledger);
    }
    Random random = new Random(SEED);
    List<String> wrong = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      Path damaged = folder.resolve("damaged-" + round);
      BuiltJar.copy(whole, damaged);
      byte[] changed = damage(file, random, round);
      Files.write(KeptLedger.database(damaged), changed);
      boolean isMarked = round / KINDS % 2 == 1;
      if (!isMarked) {
        ClosedMark.lift(damaged.resolve("db"));
      }
      String where = "seed " + SEED + ", round " + round;
      int before = rebuilt;
      assertTimeoutPreemptively(
          PATIENCE, () -> wrong.addAll(wrongIn(damaged, truth, where)), where);
      if (isMarked && !Arrays.equals(changed, file) && rebuilt == before) {
        wrong.add(where + ": not found although it was marked");
      }
    }
    System.out.println("database damaged " + ROUNDS + " times, rebuilt " + rebuilt);
    assertEquals(List.of(), wrong);
  }

  /** A cut, or a few bytes changed near one another as a bad block does. */
  private static byte[] damage(byte[] file, Random random, int round) {
    if (round % KINDS == 3) {
      return Arrays.copyOf(file, random.nextInt(file.length));
    }
    byte[] changed = file.clone();
    int at = random.nextInt(file.length);
    int length = round % KINDS == 2 ? 512 : 1 + random.nextInt(4);
    for (int i = at; i < Math.min(file.length, at + length); i++) {
      changed[i] = (byte) random.nextInt();
    }
    return changed;
  }

  private List<String> wrongIn(Path damaged, List<String> truth, String where) {
    KeptLedger.Inbox inbox = new KeptLedger.Inbox();
    try (Ledger ledger = Ledger.open(damaged, inbox)) {
      rebuilt += inbox.said().stream().anyMatch(s -> s.startsWith("rebuild")) ? 1 : 0;
      List<String> wrong = new ArrayList<>();
      List<String> says = KeptLedger.says(ledger);
      if (!says.equals(truth)) {
        wrong.add(where + ": " + says);
      }
      KeptLedger.wrongResults(ledger).forEach(r -> wrong.add(where + ": " + r));
      return wrong;
    } catch (DataAccessException failure) {
      // Said aloud on the way: the run makes the database again and is done once more.
      return Ledger.isDatabaseFault(failure) ? List.of() : List.of(where + ": " + failure);
    }
  }
}
