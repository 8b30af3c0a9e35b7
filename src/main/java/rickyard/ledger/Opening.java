package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Brings an office's ledger from whatever state it is found in to an open one. */
final class Opening {
  private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

  private final Path folder;
  private final Rescue rescue;
  private final Journal journal;
  private final Originals originals;
  private final Repair repair;
  private final Upgrade upgrade;

  Opening(Path folder, Rescue rescue) {
    this.folder = folder;
    this.rescue = rescue;
    this.journal = new Journal(folder.resolve("journal"));
    this.originals = new Originals(folder.resolve("originals"), rescue);
    this.repair = new Repair(folder, journal, originals, rescue);
    this.upgrade = new Upgrade(folder, journal, rescue);
  }

  Ledger open() {
    prepare();
    Optional<Head> head = head();
    upgrade.keepCopy(head);
    Survey survey = journal.survey(head);
    if (!isThere() && shouldBeThere(head, survey)) {
      return rebuilt(head, survey, "is missing", new IllegalStateException("missing"));
    }
    if (ClosedMark.isAltered(db())) {
      return rebuilt(head, survey, "was altered while it was closed", new IllegalStateException());
    }
    Database database;
    try {
      database = Database.open(db());
    } catch (RuntimeException | OutOfMemoryError damage) {
      if (DatabaseFaults.isInUse(damage)) {
        throw new LedgerException(
            "The ledger's database in " + db() + " is open in another program; close that first.",
            damage);
      }
      return rebuilt(head, survey, "cannot be opened", damage);
    }
    if (database.isNewer() && head.isEmpty()) {
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
      return rebuilt(head, survey, "is damaged", damage);
    }
  }

  Ledger rebuild(String why) {
    prepare();
    Optional<Head> head = head();
    upgrade.keepCopy(head);
    return rebuilt(head, journal.survey(head), why, new IllegalStateException("asked for"));
  }

  private boolean isThere() {
    return Files.exists(db().resolve(ClosedMark.DATABASE));
  }

  private boolean shouldBeThere(Optional<Head> head, Survey survey) {
    return survey.last() > 0
        || survey.tail().isPresent()
        || (head.isEmpty() && !originals.all().isEmpty());
  }

  private Path db() {
    return folder.resolve("db");
  }

  private void prepare() {
    try {
      DurableFiles.privateFolder(folder.resolve("tmp"));
      DurableFiles.wipe(folder.resolve("tmp"));
      DurableFiles.wipeTemporary(folder);
      DurableFiles.wipeTemporary(db());
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
    try (Database made = Database.open(folder.resolve("tmp").resolve("db"))) {
      new MorningIndex(made).follow(journal, sound, survey);
      made.checkpoint();
    }
    boolean wasThere = isThere();
    swap();
    rescue.say(
        "rebuild  the ledger's database "
            + why
            + "; made again from originals and journal ("
            + mornings(sound.finished())
            + ")"
            + (wasThere ? "; the old one is in " + aside() : ""));
    return opened(Database.open(db()), sound, survey);
  }

  private Path aside() {
    return folder.resolve("set-aside").resolve("db");
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

  /** The new database takes the place of the old; killed in between, the next opening makes one. */
  private void swap() {
    try {
      DurableFiles.privateFolder(folder.resolve("set-aside"));
      if (Files.exists(db())) {
        DurableFiles.remove(aside());
        DurableFiles.rename(db(), aside());
      }
      DurableFiles.rename(folder.resolve("tmp").resolve("db"), db());
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
