package rickyard.ledger;

import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** The open database of an office, brought to this program's schema; the same on every kind. */
abstract sealed class Database implements AutoCloseable permits FileDatabase, ServerDatabase {
  /** The migrations' own table. */
  static final String HISTORY = "flyway_schema_history";

  /** Spring Batch's tables, those that refer to others first. */
  private static final List<String> JOBS =
      List.of(
          "batch_step_execution_context",
          "batch_job_execution_context",
          "batch_step_execution",
          "batch_job_execution_params",
          "batch_job_execution",
          "batch_job_instance");

  private final DataSource source;
  private final JdbcTemplate jdbc;
  private final JdbcTransactionManager transactions;
  private final int before;

  Database(DataSource source, int before) {
    this.source = source;
    this.jdbc = new JdbcTemplate(source);
    this.transactions = new JdbcTransactionManager(source);
    this.before = before;
  }

  static FluentConfiguration migrations(DataSource source) {
    return Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration")
        .failOnMissingLocations(true);
  }

  /** What the migrations left in their own table, read directly: looking for more takes time. */
  static int version(JdbcTemplate jdbc, String schema) {
    List<String> tables =
        jdbc.queryForList(
            "SELECT table_name FROM information_schema.tables"
                + " WHERE table_schema = ? AND table_name = ?",
            String.class,
            schema,
            HISTORY);
    if (tables.isEmpty()) {
      return 0;
    }
    Integer last =
        jdbc.queryForObject(
            "SELECT MAX(CAST(version AS INTEGER)) FROM " + HISTORY + " WHERE success",
            Integer.class);
    return last == null ? 0 : last;
  }

  boolean isOlder() {
    return before > 0 && before < Head.FORMAT;
  }

  boolean isNewer() {
    return before > Head.FORMAT;
  }

  DataSource source() {
    return source;
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

  /** The job's word for this kind of database. */
  abstract String kind();

  /** What workers elsewhere can share; empty for a file. */
  abstract Optional<Sharing> sharing();

  /** Brings every commit so far to the disk. */
  abstract void checkpoint();

  /** Whether it is out of reach by now, with the sentence for it. */
  abstract Optional<LedgerException> lost();

  @Override
  public abstract void close();
}
