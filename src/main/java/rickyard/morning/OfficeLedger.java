package rickyard.morning;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.LedgerPlace;
import rickyard.ledger.OfficeLock;
import rickyard.ledger.Rescue;

/**
 * The ledger of an office, held for one action. A database that turns out to be damaged on the way
 * is made again from originals and journal, and the action is done once more.
 */
final class OfficeLedger {
  private static final String DAMAGED = "turned out to be damaged";

  private final LedgerPlace place;
  private final Progress progress;
  private final Rescue rescue;

  OfficeLedger(OfficeFolders folders, Progress progress) {
    this.place = folders.place();
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
      return orHeld(() -> mended(action));
    }
  }

  /** A second machine has another folder and sees only on the server that the office is held. */
  private static <T> T orHeld(Supplier<T> run) {
    try {
      return run.get();
    } catch (LedgerException refusal) {
      if (refusal.isHeld()) {
        throw new OfficeHeldException(String.valueOf(refusal.getMessage()));
      }
      throw refusal;
    }
  }

  private <T> T mended(Function<Ledger, T> action) {
    try {
      return done(Ledger.open(place, rescue), action);
    } catch (IndexFaultException damage) {
      return again(action);
    } catch (RuntimeException failure) {
      if (progress.isStopping() || !Ledger.isDatabaseFault(failure)) {
        throw failure;
      }
      return again(action);
    }
  }

  /** Does it, and tells a server that is gone from a database that is damaged. */
  private <T> T done(Ledger open, Function<Ledger, T> action) {
    try (Ledger ledger = open) {
      try {
        return action.apply(ledger);
      } catch (RuntimeException failure) {
        if (!progress.isStopping() && Ledger.isDatabaseFault(failure)) {
          refusal(ledger, failure)
              .ifPresent(
                  refusal -> {
                    throw refusal;
                  });
        }
        throw failure;
      }
    }
  }

  private Optional<LedgerException> refusal(Ledger ledger, RuntimeException failure) {
    return place.refusal(failure).or(ledger::lost);
  }

  private <T> T again(Function<Ledger, T> action) {
    try {
      return done(Ledger.rebuild(place, rescue, DAMAGED), action);
    } catch (RuntimeException second) {
      if (!Ledger.isDatabaseFault(second)) {
        throw second;
      }
      throw new LedgerException(
          "The ledger's database in "
              + place.index()
              + " cannot be read or written; check the disk, then run the same command again.",
          second);
    }
  }

  /** Makes the database anew whatever it is like, for an action. */
  <T> T rebuilt(Runnable held, Function<Ledger, T> action) {
    try (OfficeLock lock = lock()) {
      held.run();
      return orHeld(() -> done(Ledger.rebuild(place, rescue, "is put aside as asked"), action));
    }
  }

  private OfficeLock lock() {
    try {
      DurableFiles.privateFolder(place.folder());
    } catch (IOException e) {
      throw new LedgerException(
          "The ledger folder " + place.folder() + " cannot be made: " + DurableFiles.why(e), e);
    }
    return OfficeLock.take(place.folder())
        .orElseThrow(
            () ->
                new OfficeHeldException("Another run holds this office; wait until it has ended."));
  }
}
