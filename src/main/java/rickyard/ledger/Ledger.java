package rickyard.ledger;

import java.nio.file.Path;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * The open ledger of an office; the caller holds its {@link OfficeLock}.
 *
 * <p>Originals and journal are the truth. The database is an index of them and is checked at the
 * opening: what it lacks is put back from the journal, and where anything in it is not what was
 * written, all of it is made anew.
 */
public final class Ledger implements AutoCloseable {
  private final Database database;
  private final Originals originals;
  private final Journal journal;
  private final Results results;
  private final Mornings mornings;
  private final PostBook post;

  Ledger(Database database, Originals originals, Journal journal, PostBook post, Head head) {
    this.database = database;
    this.originals = originals;
    this.journal = journal;
    this.post = post;
    this.results = new Results(database);
    this.mornings = new Mornings(journal, database, results, head);
  }

  /**
   * Opens the ledger in a folder; mends what can be mended and says so.
   *
   * @param folder the ledger folder, held by the caller's lock
   * @param rescue what is at hand outside the ledger
   * @throws LedgerException if the truth itself is damaged, naming the file and the remedy
   */
  public static Ledger open(Path folder, Rescue rescue) {
    return open(LedgerPlace.of(folder), rescue);
  }

  /**
   * The same wherever its database is.
   *
   * @throws LedgerException also where a server refuses, see {@link LedgerException#isHeld()}
   */
  public static Ledger open(LedgerPlace place, Rescue rescue) {
    return new Opening(place, rescue).open();
  }

  /**
   * Puts the database aside, makes a new one from originals and journal, and opens it.
   *
   * @param why in a few words, told to the person
   */
  public static Ledger rebuild(LedgerPlace place, Rescue rescue, String why) {
    return new Opening(place, rescue).rebuild(why);
  }

  /** The same in one folder. */
  static Ledger rebuild(Path folder, Rescue rescue, String why) {
    return rebuild(LedgerPlace.of(folder), rescue, why);
  }

  /** Whether a failure came from the database, so that making it anew may help. */
  public static boolean isDatabaseFault(Throwable failure) {
    return DatabaseFaults.isOne(failure);
  }

  public DataSource dataSource() {
    return database.source();
  }

  /** What the job's repository calls this kind of database. */
  public String databaseKind() {
    return database.kind();
  }

  /** What workers on other machines can share; empty where the index is in a file. */
  public Optional<Sharing> sharing() {
    return database.sharing();
  }

  /** Whether the database is out of reach by now, with the sentence for it. */
  public Optional<LedgerException> lost() {
    return database.lost();
  }

  public PlatformTransactionManager transactions() {
    return database.transactions();
  }

  public Originals originals() {
    return originals;
  }

  public Journal journal() {
    return journal;
  }

  /** What was handed to a mail server. */
  public PostBook post() {
    return post;
  }

  public Mornings mornings() {
    return mornings;
  }

  public Results results() {
    return results;
  }

  /** Brings every commit so far to the disk. */
  public void checkpoint() {
    database.checkpoint();
  }

  @Override
  public void close() {
    database.close();
  }
}
