package rickyard.morning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Function;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.OfficeLock;
import rickyard.ledger.Rescue;

/**
 * The ledger of an office, held for one action. A database that turns out to be damaged on the way
 * is made again from originals and journal, and the action is done once more.
 */
final class OfficeLedger {
  private static final String DAMAGED = "turned out to be damaged";

  private final Path folder;
  private final Progress progress;
  private final Rescue rescue;

  OfficeLedger(OfficeFolders folders, Progress progress) {
    this.folder = folders.ledger();
    this.progress = progress;
    this.rescue = new InboxRescue(folders.inbox(), progress::line);
  }

  /**
   * Takes the office and opens its ledger for an action.
   *
   * @param held called once the office is held
   * @throws OfficeHeldException if another run holds the office
   */
  <T> T with(Runnable held, Function<Ledger, T> action) {
    try (OfficeLock lock = lock()) {
      held.run();
      try (Ledger ledger = Ledger.open(folder, rescue)) {
        return action.apply(ledger);
      } catch (IndexFaultException damage) {
        return again(action);
      } catch (RuntimeException failure) {
        if (progress.isStopping() || !Ledger.isDatabaseFault(failure)) {
          throw failure;
        }
        return again(action);
      }
    }
  }

  private <T> T again(Function<Ledger, T> action) {
    try (Ledger ledger = Ledger.rebuild(folder, rescue, DAMAGED)) {
      return action.apply(ledger);
    } catch (RuntimeException second) {
      if (!Ledger.isDatabaseFault(second)) {
        throw second;
      }
      throw new LedgerException(
          "The ledger's database in "
              + folder.resolve("db")
              + " cannot be read or written; check the disk, then run the same command again.",
          second);
    }
  }

  /** Makes the database anew whatever it is like, for an action. */
  <T> T rebuilt(Runnable held, Function<Ledger, T> action) {
    try (OfficeLock lock = lock()) {
      held.run();
      try (Ledger ledger = Ledger.rebuild(folder, rescue, "is put aside as asked")) {
        return action.apply(ledger);
      }
    }
  }

  private OfficeLock lock() {
    try {
      DurableFiles.privateFolder(folder);
    } catch (IOException e) {
      throw new LedgerException(
          "The ledger folder " + folder + " cannot be made: " + DurableFiles.why(e), e);
    }
    return OfficeLock.take(folder)
        .orElseThrow(
            () ->
                new OfficeHeldException("Another run holds this office; wait until it has ended."));
  }
}
