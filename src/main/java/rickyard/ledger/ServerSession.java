package rickyard.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Consumer;
import org.postgresql.ds.PGSimpleDataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * One connection that is open as long as a run: it holds the office on the server, so that no run
 * on another machine has the same schema at the same time. The server frees it when the connection
 * ends, however.
 */
final class ServerSession implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ServerSession.class);
  private static final int FIRST_TO_END_IDLE_ONES = 140_000;
  private static final long PATIENCE_NANOS = 5_000_000_000L;
  private static final int STEP_MILLIS = 100;
  private static final int PROBE_SECONDS = 10;

  private final DatabaseAddress address;
  private final Connection connection;
  private final JdbcTemplate jdbc;
  private final ServerSchema schema;
  private final Gate gate;

  private ServerSession(DatabaseAddress address, String schema, Connection connection) {
    this.address = address;
    this.connection = connection;
    this.jdbc = new JdbcTemplate(new SingleConnectionDataSource(connection, true));
    this.schema = new ServerSchema(address, schema, jdbc);
    this.gate = new Gate(jdbc, schema);
  }

  /**
   * Connects, takes the office, sees every worker out and sees that its schema is there.
   *
   * @param office its id
   * @param voice told when workers take long
   * @throws LedgerException if the server refuses, another run has the office, or the schema is not
   *     the office's
   */
  static ServerSession open(DatabaseAddress address, String office, Consumer<String> voice) {
    String schema = address.schema().orElse("rickyard_" + office);
    ServerFaults faults = new ServerFaults(address);
    ServerSession session;
    try {
      session = new ServerSession(address, schema, address.source(schema).getConnection());
    } catch (SQLException e) {
      throw faults.atConnecting(e);
    }
    try {
      session.requireUnicode();
      session.stayWhileIdle();
      session.lock();
      session.gate.close(voice);
      session.schema.make(office);
      new WorkTables(session.jdbc).empty();
      return session;
    } catch (RuntimeException e) {
      session.close();
      throw faults.of(e).map(RuntimeException.class::cast).orElse(e);
    }
  }

  ServerSchema schema() {
    return schema;
  }

  Gate gate() {
    return gate;
  }

  PGSimpleDataSource source() {
    return address.source(schema.name());
  }

  private void requireUnicode() {
    String encoding = jdbc.queryForObject("SHOW server_encoding", String.class);
    if (!"UTF8".equals(encoding)) {
      throw new LedgerException(
          "Text in "
              + address.words()
              + " is kept as "
              + encoding
              + ", which lacks letters; let its keeper make one with ENCODING 'UTF8'.");
    }
  }

  /** A server may end what is idle for long, and with it the lock. */
  private void stayWhileIdle() {
    Integer version =
        jdbc.queryForObject(
            "SELECT CAST(current_setting('server_version_num') AS INTEGER)", Integer.class);
    if (version != null && version >= FIRST_TO_END_IDLE_ONES) {
      jdbc.execute("SET idle_session_timeout = 0");
    }
  }

  /** A run that was killed a moment ago may still be ending on the server. */
  private void lock() {
    long key = AdvisoryKey.office(schema.name());
    long start = System.nanoTime();
    while (!holds(key)) {
      if (System.nanoTime() - start > PATIENCE_NANOS) {
        throw LedgerException.held(
            "Another run, perhaps on another machine, holds this office in "
                + address.words()
                + "; wait until it has ended.");
      }
      pause();
    }
  }

  private boolean holds(long key) {
    return Boolean.TRUE.equals(
        jdbc.queryForObject("SELECT pg_try_advisory_lock(?)", Boolean.class, key));
  }

  private static void pause() {
    try {
      Thread.sleep(STEP_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LedgerException("Interrupted while waiting for the office.", e);
    }
  }

  boolean isAlive() {
    try {
      return connection.isValid(PROBE_SECONDS);
    } catch (SQLException e) {
      return false;
    }
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      LOG.warn("connection not closed: {}", e.getClass().getName());
    }
  }
}
