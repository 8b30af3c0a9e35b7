package rickyard.ledger;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The open ledger of an office; the caller holds its {@link OfficeLock}.
 *
 * <p>Whatever the database lost, or lacks because it was removed, is put back at the opening from
 * the journal.
 */
public final class Ledger implements AutoCloseable {
  private final JdbcConnectionPool pool;
  private final JdbcTemplate jdbc;
  private final JdbcTransactionManager transactions;
  private final Originals originals;
  private final Journal journal;

  private Ledger(JdbcConnectionPool pool, Path folder) {
    this.pool = pool;
    this.jdbc = new JdbcTemplate(pool);
    this.transactions = new JdbcTransactionManager(pool);
    this.originals = new Originals(folder.resolve("originals"));
    this.journal = new Journal(folder.resolve("journal"));
  }

  /**
   * Opens the ledger in a folder and migrates it. A database that cannot be opened is put aside and
   * built again from the journal.
   *
   * @param folder the ledger folder, held by the caller's lock
   */
  public static Ledger open(Path folder) {
    wipe(folder.resolve("tmp"));
    try {
      DurableFiles.privateFolder(folder.resolve("db"));
    } catch (IOException e) {
      throw new LedgerException("The ledger folder cannot be written: " + e.getMessage(), e);
    }
    Ledger ledger;
    try {
      ledger = connect(folder);
    } catch (FlywayException | DataAccessException e) {
      putAside(folder, e);
      ledger = connect(folder);
    }
    ledger.takeFromJournal();
    return ledger;
  }

  private static Ledger connect(Path folder) {
    String url =
        "jdbc:h2:file:"
            + folder.resolve("db").resolve("rickyard").toAbsolutePath()
            + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
            + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0";
    JdbcConnectionPool pool = JdbcConnectionPool.create(url, "rickyard", "");
    try {
      Flyway.configure()
          .dataSource(pool)
          .locations("classpath:db/migration")
          .failOnMissingLocations(true)
          .load()
          .migrate();
      return new Ledger(pool, folder);
    } catch (FlywayException | DataAccessException e) {
      pool.dispose();
      throw e;
    }
  }

  private static void putAside(Path folder, Exception why) {
    Path damaged = folder.resolve("db-damaged");
    try {
      wipe(damaged);
      Files.deleteIfExists(damaged);
      Files.move(folder.resolve("db"), damaged);
      DurableFiles.privateFolder(folder.resolve("db"));
    } catch (IOException e) {
      e.addSuppressed(why);
      throw new LedgerException(
          "The ledger's database is damaged and cannot be put aside: " + e.getMessage(), e);
    }
  }

  private static void wipe(Path folder) {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        if (!file.equals(folder)) {
          Files.delete(file);
        }
      }
    } catch (IOException e) {
      throw new LedgerException("Temporary files cannot be removed: " + e.getMessage(), e);
    }
  }

  private void takeFromJournal() {
    List<Integer> known = jdbc.queryForList("SELECT number FROM morning", Integer.class);
    for (int number : journal.numbers()) {
      if (!known.contains(number)) {
        journal.find(number).ifPresent(this::index);
      }
    }
  }

  private void index(JournalEntry entry) {
    begin(
        new MorningRow(
            entry.number(),
            LocalDate.parse(entry.asOf()),
            entry.identity(),
            entry.content(),
            false),
        entry.arrivals());
    finish(entry.number());
  }

  public DataSource dataSource() {
    return pool;
  }

  public PlatformTransactionManager transactions() {
    return transactions;
  }

  public Originals originals() {
    return originals;
  }

  public Journal journal() {
    return journal;
  }

  /** The morning with the highest number that was published whole. */
  public Optional<MorningRow> lastFinished() {
    return first("SELECT * FROM morning WHERE state = 'finished' ORDER BY number DESC");
  }

  /** A morning that was begun and not finished; there is at most one. */
  public Optional<MorningRow> unfinished() {
    return first("SELECT * FROM morning WHERE state <> 'finished' ORDER BY number DESC");
  }

  private Optional<MorningRow> first(String sql) {
    return jdbc
        .query(
            sql,
            (row, n) ->
                new MorningRow(
                    row.getInt("number"),
                    row.getObject("as_of", LocalDate.class),
                    row.getString("identity"),
                    row.getString("content"),
                    "finished".equals(row.getString("state"))))
        .stream()
        .findFirst();
  }

  /** Notes the beginning of a morning with its frozen inventory; replaces an abandoned one. */
  public void begin(MorningRow morning, List<ArrivalRow> arrivals) {
    new TransactionTemplate(transactions).executeWithoutResult(t -> insert(morning, arrivals));
  }

  private void insert(MorningRow morning, List<ArrivalRow> arrivals) {
    forget(morning.number());
    jdbc.update(
        "INSERT INTO morning (number, as_of, identity, content, state) VALUES (?, ?, ?, ?, ?)",
        morning.number(),
        morning.asOf(),
        morning.identity(),
        morning.content(),
        "running");
    insertArrivals(morning.number(), arrivals);
  }

  private void insertArrivals(int morning, List<ArrivalRow> arrivals) {
    for (int i = 0; i < arrivals.size(); i++) {
      ArrivalRow arrival = arrivals.get(i);
      jdbc.update(
          "INSERT INTO arrival (morning, seq, path, sha256, bytes, problem_code, problem)"
              + " VALUES (?, ?, ?, ?, ?, ?, ?)",
          morning,
          i,
          arrival.path(),
          arrival.sha256(),
          arrival.bytes(),
          arrival.problemCode(),
          arrival.problem());
    }
  }

  /** Forgets a morning that was not finished; its cached readings stay. */
  public void forget(int number) {
    jdbc.update("DELETE FROM stage WHERE morning = ?", number);
    jdbc.update("DELETE FROM arrival WHERE morning = ?", number);
    jdbc.update("DELETE FROM morning WHERE number = ?", number);
  }

  /** Marks a morning as published whole and drops the step results of those before it. */
  public void finish(int number) {
    jdbc.update("UPDATE morning SET state = 'finished' WHERE number = ?", number);
    jdbc.update("DELETE FROM stage WHERE morning < ?", number);
    checkpoint();
  }

  /** The frozen inventory of a morning, in its order. */
  public List<ArrivalRow> arrivals(int morning) {
    return jdbc.query(
        "SELECT * FROM arrival WHERE morning = ? ORDER BY seq",
        (row, n) -> arrivalRow(row),
        morning);
  }

  private static ArrivalRow arrivalRow(ResultSet row) throws SQLException {
    return new ArrivalRow(
        row.getString("path"),
        row.getString("sha256"),
        row.getLong("bytes"),
        row.getString("problem_code"),
        row.getString("problem"));
  }

  /** One entry of a morning's inventory. */
  public ArrivalRow arrival(int morning, int seq) {
    return jdbc.query(
            "SELECT * FROM arrival WHERE morning = ? AND seq = ?",
            (row, n) -> arrivalRow(row),
            morning,
            seq)
        .get(0);
  }

  /** Replaces the inventory of a morning by the same files with what was found of them since. */
  public void replaceArrivals(int morning, List<ArrivalRow> arrivals) {
    jdbc.update("DELETE FROM arrival WHERE morning = ?", morning);
    insertArrivals(morning, arrivals);
  }

  /** Whether this reader has read a document. */
  public boolean hasReading(String sha256, String reader) {
    Integer found =
        jdbc.queryForObject(
            "SELECT COUNT(*) FROM reading WHERE sha256 = ? AND reader = ?",
            Integer.class,
            sha256,
            reader);
    return found != null && found > 0;
  }

  /** The journal of the last finished morning. */
  public Optional<JournalEntry> lastJournal() {
    return lastFinished().flatMap(m -> journal.find(m.number()));
  }

  /**
   * A file that a finished morning held.
   *
   * @param sha256 its hash
   * @param path where it lay
   * @param on that morning's day
   */
  public record Seen(String sha256, String path, LocalDate on) {}

  /** All files that finished mornings before this one held, the first sighting of each first. */
  public List<Seen> seenBefore(int morning) {
    return jdbc.query(
        "SELECT a.sha256, a.path, m.as_of FROM arrival a JOIN morning m ON m.number = a.morning"
            + " WHERE m.state = 'finished' AND a.morning < ? AND a.problem_code = ''"
            + " ORDER BY a.morning, a.seq",
        (row, n) ->
            new Seen(
                row.getString("sha256"),
                row.getString("path"),
                row.getObject("as_of", LocalDate.class)),
        morning);
  }

  /** What a reader made of a document, if this reader has read it before. */
  public <T> Optional<T> reading(String sha256, String reader, Class<T> type) {
    return blob("SELECT document FROM reading WHERE sha256 = ? AND reader = ?", sha256, reader)
        .map(bytes -> Documents.unpack(bytes, type));
  }

  /** Keeps what a reader made of a document. */
  public void keepReading(String sha256, String reader, Serializable document) {
    jdbc.update("DELETE FROM reading WHERE sha256 = ? AND reader = ?", sha256, reader);
    jdbc.update(
        "INSERT INTO reading (sha256, reader, document) VALUES (?, ?, ?)",
        sha256,
        reader,
        Documents.pack(document));
  }

  /** The result of a step of a morning, if it is there. */
  public <T> Optional<T> stage(int morning, String name, Class<T> type) {
    return blob("SELECT document FROM stage WHERE morning = ? AND name = ?", morning, name)
        .map(bytes -> Documents.unpack(bytes, type));
  }

  /** Keeps the result of a step of a morning. */
  public void keepStage(int morning, String name, Serializable document) {
    jdbc.update("DELETE FROM stage WHERE morning = ? AND name = ?", morning, name);
    jdbc.update(
        "INSERT INTO stage (morning, name, document) VALUES (?, ?, ?)",
        morning,
        name,
        Documents.pack(document));
  }

  private Optional<byte[]> blob(String sql, Object... arguments) {
    return jdbc.query(sql, (row, n) -> row.getBytes(1), arguments).stream().findFirst();
  }

  /** Brings every commit so far to the disk: H2's commits wait in memory, a kill can lose them. */
  public void checkpoint() {
    jdbc.execute("CHECKPOINT SYNC");
  }

  @Override
  public void close() {
    try {
      jdbc.execute("SHUTDOWN");
    } catch (DataAccessException e) {
      if (!(e.getCause() instanceof SQLException)) {
        throw e;
      }
    } finally {
      pool.dispose();
    }
  }
}
