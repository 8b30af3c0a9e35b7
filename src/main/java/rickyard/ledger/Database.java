package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** The database of an office in a folder of its own, brought to this program's schema. */
final class Database implements AutoCloseable {
  /** Spring Batch's tables, those that refer to others first. */
  private static final List<String> JOBS =
      List.of(
          "batch_step_execution_context",
          "batch_job_execution_context",
          "batch_step_execution",
          "batch_job_execution_params",
          "batch_job_execution",
          "batch_job_instance");

  private final Path folder;
  private final JdbcConnectionPool pool;
  private final JdbcTemplate jdbc;
  private final JdbcTransactionManager transactions;
  private final int before;

  private Database(Path folder, JdbcConnectionPool pool, int before) {
    this.folder = folder;
    this.pool = pool;
    this.jdbc = new JdbcTemplate(pool);
    this.transactions = new JdbcTransactionManager(pool);
    this.before = before;
  }

  /**
   * Opens it, makes it where there is none, and migrates it.
   *
   * @throws RuntimeException of the database or of its migration, where it is damaged, foreign or
   *     of a later version
   */
  static Database open(Path folder) {
    try {
      DurableFiles.privateFolder(folder);
      ClosedMark.lift(folder);
    } catch (IOException e) {
      throw new IllegalStateException("not a folder that can be written: " + folder, e);
    }
    String url =
        "jdbc:h2:file:"
            + folder.resolve("rickyard").toAbsolutePath()
            + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
            + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0";
    JdbcConnectionPool pool = JdbcConnectionPool.create(url, "rickyard", "");
    boolean opened = false;
    try {
      int before = version(new JdbcTemplate(pool));
      if (before < Head.FORMAT) {
        migrate(pool);
      }
      opened = true;
      return new Database(folder, pool, before);
    } finally {
      if (!opened) {
        pool.dispose();
      }
    }
  }

  private static void migrate(JdbcConnectionPool pool) {
    Flyway.configure()
        .dataSource(pool)
        .locations("classpath:db/migration")
        .failOnMissingLocations(true)
        .load()
        .migrate();
  }

  /** What the migrations left in their own table, read directly: looking for more takes time. */
  private static int version(JdbcTemplate jdbc) {
    List<String> tables =
        jdbc.queryForList(
            "SELECT table_name FROM information_schema.tables"
                + " WHERE table_schema = 'public' AND table_name = 'flyway_schema_history'",
            String.class);
    if (tables.isEmpty()) {
      return 0;
    }
    Integer last =
        jdbc.queryForObject(
            "SELECT MAX(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success",
            Integer.class);
    return last == null ? 0 : last;
  }

  /** Number of the last migration that it had before it was opened; 0 where it is new. */
  int before() {
    return before;
  }

  boolean isOlder() {
    return before > 0 && before < Head.FORMAT;
  }

  boolean isNewer() {
    return before > Head.FORMAT;
  }

  JdbcConnectionPool pool() {
    return pool;
  }

  JdbcTemplate jdbc() {
    return jdbc;
  }

  JdbcTransactionManager transactions() {
    return transactions;
  }

  /** Forgets the executions of finished mornings: they are of no use and would only grow. */
  void forgetJobs() {
    JOBS.forEach(table -> jdbc.update("DELETE FROM " + table));
  }

  /** Brings every commit so far to the disk: H2's commits wait in memory, a kill can lose them. */
  void checkpoint() {
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
    ClosedMark.set(folder);
  }
}
