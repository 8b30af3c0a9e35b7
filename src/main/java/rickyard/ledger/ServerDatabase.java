package rickyard.ledger;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Optional;
import org.postgresql.ds.PGSimpleDataSource;
import org.springframework.jdbc.core.JdbcTemplate;

/** The database of an office as a schema of its own on a PostgreSQL server. */
final class ServerDatabase extends Database {
  static final String KIND = "POSTGRES";

  /** One for each part that is read at a time, and the job's own. */
  private static final int CONNECTIONS = 10;

  private static final long WAIT_MILLIS = 15_000;

  private final HikariDataSource pool;
  private final ServerSession session;
  private final ServerFaults faults;
  private final Runnable onClose;

  private ServerDatabase(
      HikariDataSource pool,
      int before,
      ServerSession session,
      ServerFaults faults,
      Runnable onClose) {
    super(pool, before);
    this.pool = pool;
    this.session = session;
    this.faults = faults;
    this.onClose = onClose;
  }

  /**
   * Opens it in the session's schema, and migrates it.
   *
   * @param onClose run behind the closing
   */
  static ServerDatabase open(ServerSession session, ServerFaults faults, Runnable onClose) {
    HikariDataSource pool = pool(session.source(), "ledger", CONNECTIONS);
    boolean opened = false;
    try {
      int before = version(new JdbcTemplate(pool), session.schema().name());
      if (before < Head.FORMAT) {
        migrate(pool, session.schema().name());
      }
      opened = true;
      return new ServerDatabase(pool, before, session, faults, onClose);
    } finally {
      if (!opened) {
        pool.close();
      }
    }
  }

  /** Connections for a number of threads; the first is made when it is asked for. */
  static HikariDataSource pool(PGSimpleDataSource source, String name, int connections) {
    HikariDataSource pool = new HikariDataSource();
    pool.setDataSource(source);
    pool.setPoolName(name);
    pool.setMaximumPoolSize(connections);
    pool.setMinimumIdle(1);
    pool.setConnectionTimeout(WAIT_MILLIS);
    return pool;
  }

  /** The schema holds the office's mark already: the migrations begin above it. */
  private static void migrate(HikariDataSource pool, String schema) {
    migrations(pool)
        .schemas(schema)
        .createSchemas(false)
        .baselineOnMigrate(true)
        .baselineVersion("0")
        .load()
        .migrate();
  }

  @Override
  String kind() {
    return KIND;
  }

  @Override
  Optional<Sharing> sharing() {
    return Optional.of(new Sharing(session, this));
  }

  /** The server keeps every commit; what has to be sure is that the office is still held. */
  @Override
  void checkpoint() {
    lost()
        .ifPresent(
            lost -> {
              throw lost;
            });
  }

  @Override
  Optional<LedgerException> lost() {
    return session.isAlive()
        ? Optional.empty()
        : Optional.of(faults.lost(new IllegalStateException("session ended")));
  }

  @Override
  public void close() {
    try {
      pool.close();
    } finally {
      onClose.run();
    }
  }
}
