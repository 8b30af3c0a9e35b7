package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Brings an office's ledger from whatever state it is found in to an open one. */
final class Opening {
  private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

  private final Path folder;
  private final DatabaseHome home;
  private final Rescue rescue;
  private final Journal journal;
  private final Originals originals;
  private final Repair repair;
  private final Upgrade upgrade;

  Opening(LedgerPlace place, Rescue rescue) {
    this.folder = place.folder();
    this.home = DatabaseHome.of(place, rescue::say);
    this.rescue = rescue;
    this.journal = new Journal(folder.resolve("journal"));
    this.originals = new Originals(folder.resolve("originals"), rescue);
    this.repair = new Repair(folder, journal, originals, rescue);
    this.upgrade = new Upgrade(folder, journal, rescue);
  }

  Ledger open() {
    return orReleased(this::found);
  }

  Ledger rebuild(String why) {
    return orReleased(
        () -> {
          prepare();
          Optional<Head> head = head();
          upgrade.keepCopy(head);
          return rebuilt(head, journal.survey(head), why, new IllegalStateException("asked for"));
        });
  }

  private Ledger orReleased(Supplier<Ledger> opening) {
    boolean opened = false;
    try {
      Ledger ledger = opening.get();
      opened = true;
      return ledger;
    } finally {
      if (!opened) {
        home.release();
      }
    }
  }

  private Ledger found() {
    prepare();
    Optional<Head> head = head();
    upgrade.keepCopy(head);
    Survey survey = journal.survey(head);
    if (!home.isThere() && shouldBeThere(head, survey)) {
      return rebuilt(head, survey, "is missing", new IllegalStateException("missing"));
    }
    if (home.isAltered()) {
      return rebuilt(head, survey, "was altered while it was closed", new IllegalStateException());
    }
    Database database;
    try {
      database = home.open();
    } catch (RuntimeException | OutOfMemoryError damage) {
      refuse(damage);
      return rebuilt(head, survey, "cannot be opened", damage);
    }
    if (database.isNewer() && (head.isEmpty() || !home.mayReplaceNewer())) {
      database.close();
      throw LedgerException.newer();
    }
    try {
      return checked(database, head, survey);
    } catch (LedgerException truth) {
      database.close();
      throw truth;
    } catch (RuntimeException | OutOfMemoryError damage) {
      closeDamaged(database);
      refuse(damage);
      return rebuilt(head, survey, "is damaged", damage);
    }
  }

  /** What is no damage of the database stops the opening. */
  private void refuse(Throwable failure) {
    home.refusal(failure)
        .ifPresent(
            refusal -> {
              throw refusal;
            });
  }

  private boolean shouldBeThere(Optional<Head> head, Survey survey) {
    return survey.last() > 0
        || survey.tail().isPresent()
        || (head.isEmpty() && !originals.all().isEmpty());
  }

  private void prepare() {
    try {
      DurableFiles.privateFolder(folder.resolve("tmp"));
      DurableFiles.wipe(folder.resolve("tmp"));
      DurableFiles.wipeTemporary(folder);
      DurableFiles.wipeTemporary(folder.resolve("db"));
      DurableFiles.wipeTemporary(folder.resolve("journal"));
      DurableFiles.wipeTemporary(folder.resolve("originals"));
    } catch (IOException e) {
      throw cannotWrite(e);
    }
  }

  private LedgerException cannotWrite(IOException e) {
    return LedgerException.cannotWrite(folder, e);
  }

  private Optional<Head> head() {
    Optional<Head> head = journal.head();
    if (head.isPresent() && head.get().format() > Head.FORMAT) {
      throw LedgerException.newer();
    }
    return head;
  }

  /** Compares the database with the journal; throws whatever shows that it is damaged. */
  private Ledger checked(Database database, Optional<Head> known, Survey survey) {
    if (database.isNewer()) {
      throw new IllegalStateException("schema of a later version than the journal's");
    }
    MorningIndex index = new MorningIndex(database);
    if (!database.isOlder()) {
      index
          .unsound()
          .ifPresent(
              what -> {
                throw new IllegalStateException(what);
              });
    }
    if (known.isPresent()) {
      return opened(database, known.get(), survey);
    }
    Head head = repair.headOf(index.rows(), survey);
    return opened(database, head, journal.survey(Optional.of(head)));
  }

  private Ledger opened(Database database, Head known, Survey survey) {
    Head head = repair.tail(known, survey);
    int put = new MorningIndex(database).follow(journal, head, survey);
    if (put > 0 && !database.isOlder()) {
      rescue.say(
          "repair   the ledger's database lacked " + mornings(put) + "; put back from the journal");
    }
    if (head.begun().isEmpty()) {
      database.forgetJobs();
    }
    database.checkpoint();
    if (!journal.head().equals(Optional.of(head))) {
      journal.write(head);
    }
    Ledger ledger = new Ledger(database, originals, journal, new PostBook(folder), head);
    repair.requireOriginals(ledger.mornings());
    return ledger;
  }

  private static String mornings(int count) {
    return count == 1 ? "1 morning" : count + " mornings";
  }

  private Ledger rebuilt(Optional<Head> head, Survey survey, String why, Throwable damage) {
    LOG.warn("database rebuilt: {} {}", damage.getClass().getName(), why);
    requireRoom();
    Head known = head.orElseGet(() -> repair.headWithoutIndex(survey));
    Head sound = repair.tail(known, survey);
    boolean wasThere = home.isThere();
    home.remake(made -> new MorningIndex(made).follow(journal, sound, survey));
    rescue.say(
        "rebuild  the ledger's database "
            + why
            + "; made again from originals and journal ("
            + mornings(sound.finished())
            + ")"
            + (wasThere ? home.aside() : ""));
    return opened(home.open(), sound, survey);
  }

  /** A full disk is not a damaged database. */
  private void requireRoom() {
    Path probe = folder.resolve("tmp").resolve("probe");
    try {
      DurableFiles.write(probe, new byte[1 << 18]);
      DurableFiles.delete(probe);
    } catch (IOException e) {
      throw cannotWrite(e);
    }
  }

  private static void closeDamaged(Database database) {
    try {
      database.close();
    } catch (RuntimeException expected) {
      LOG.warn("database not closed: {}", expected.getClass().getName());
    }
  }
}
