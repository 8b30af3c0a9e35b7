package rickyard.ledger;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What a worker sees of an office's ledger: what a run hands to it, and where readings are kept. It
 * neither holds the office nor knows its folder; it touches a table only while a run, or the end of
 * one, lets it in.
 */
public final class WorkerLedger implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(WorkerLedger.class);
  private static final int PROBE_SECONDS = 10;

  private final DatabaseAddress address;
  private final String schema;
  private final Connection session;
  private final HikariDataSource pool;
  private final JdbcTransactionManager transactions;
  private final JdbcTemplate jdbc;
  private final WorkTables tables;
  private final Results results;

  private WorkerLedger(DatabaseAddress address, String schema, int parts, Connection session) {
    this.address = address;
    this.schema = schema;
    this.session = session;
    this.pool = ServerDatabase.pool(address.source(schema), "ledger", parts + 1);
    this.transactions = new JdbcTransactionManager(pool);
    this.jdbc = new JdbcTemplate(pool);
    this.tables = new WorkTables(jdbc);
    this.results = new Results(jdbc);
  }

  /**
   * Opens it where there is one.
   *
   * @param folder the office's ledger folder, if it is at hand
   * @param parts read at a time
   * @return empty before the office's first run on that server
   * @throws LedgerException if the server refuses, or it is not clear which office is meant
   */
  public static Optional<WorkerLedger> find(
      DatabaseAddress address, Optional<Path> folder, int parts) {
    Optional<String> office = folder.flatMap(OfficeId::find);
    if (folder.isPresent() && office.isEmpty() && address.schema().isEmpty()) {
      // The office has no name on servers yet; whichever is there is another.
      return Optional.empty();
    }
    return new WorkerSchemas(address, office).find().map(schema -> open(address, schema, parts));
  }

  private static WorkerLedger open(DatabaseAddress address, String schema, int parts) {
    try {
      return new WorkerLedger(address, schema, parts, address.source(schema).getConnection());
    } catch (SQLException e) {
      throw new ServerFaults(address).atConnecting(e);
    }
  }

  /** Lets runs see that a worker with this reader is there, as long as this is open. */
  public void register(String reader) {
    // Those of a reader before it are given back.
    JdbcTemplate held = new JdbcTemplate(new SingleConnectionDataSource(session, true));
    held.query("SELECT pg_advisory_unlock_all()", row -> {});
    for (long key : List.of(AdvisoryKey.workers(schema), AdvisoryKey.workers(schema, reader))) {
      held.query("SELECT pg_advisory_lock_shared(?)", row -> {}, key);
    }
  }

  /** What is wanted read now; empty where nothing is, or a run wants nobody to look. */
  public Optional<Task> task() {
    return new TransactionTemplate(transactions)
        .execute(
            t ->
                new Hold(jdbc, jdbc, transactions, schema).isInside()
                    ? tables.task()
                    : Optional.empty());
  }

  /** The frozen inventory of a morning. */
  public List<ArrivalRow> arrivals(int morning) {
    return MorningIndex.arrivals(jdbc, morning);
  }

  /** How many documents wait for a reader. */
  public int left() {
    return tables.documents();
  }

  /**
   * The bytes of a document that was handed out.
   *
   * @throws LedgerException if they are not there or not what they should be
   */
  public byte[] document(String sha256) {
    return tables
        .document(sha256)
        .filter(bytes -> Originals.sha256(bytes).equals(sha256))
        .orElseThrow(
            () -> new LedgerException("The original " + sha256 + " was not handed over whole."));
  }

  /** Nothing more is handed out of a document that is read. */
  public void drop(String sha256) {
    tables.drop(sha256);
  }

  public Results results() {
    return results;
  }

  public DataSource dataSource() {
    return pool;
  }

  public String databaseKind() {
    return ServerDatabase.KIND;
  }

  public PlatformTransactionManager transactions() {
    return transactions;
  }

  /** Opens the channel's connections; the caller closes them. */
  public Channel channel(int most) {
    return new Channel(address.source(schema), most, pool, transactions, schema);
  }

  /** Whether the server is out of reach by now, with the sentence for it. */
  public Optional<LedgerException> lost() {
    try {
      return session.isValid(PROBE_SECONDS)
          ? Optional.empty()
          : Optional.of(new ServerFaults(address).worker(new IllegalStateException("ended")));
    } catch (SQLException e) {
      return Optional.of(new ServerFaults(address).worker(e));
    }
  }

  /** The sentence for a failure that the server is to blame for. */
  public Optional<LedgerException> refusal(Throwable failure) {
    return new ServerFaults(address).of(failure);
  }

  @Override
  public void close() {
    pool.close();
    try {
      session.close();
    } catch (SQLException e) {
      LOG.warn("connection not closed: {}", e.getClass().getName());
    }
  }
}
