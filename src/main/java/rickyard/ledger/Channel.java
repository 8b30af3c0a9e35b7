package rickyard.ledger;

import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * The connections of the channel between a run and its workers, apart from the ledger's: a part is
 * in hand for as long as one transaction here, while each of its documents is one there.
 */
public final class Channel implements AutoCloseable {
  private final HikariDataSource pool;
  private final JdbcTransactionManager transactions;
  private final JdbcTemplate jdbc;
  private final JdbcTemplate ledger;
  private final PlatformTransactionManager ledgerTransactions;
  private final String schema;

  Channel(
      PGSimpleDataSource source,
      int connections,
      DataSource ledger,
      PlatformTransactionManager ledgerTransactions,
      String schema) {
    this.pool = ServerDatabase.pool(source, "channel", connections);
    // A part may take longer than a server lets a transaction wait.
    pool.setConnectionInitSql("SET idle_in_transaction_session_timeout = 0");
    this.transactions = new JdbcTransactionManager(pool);
    this.jdbc = new JdbcTemplate(pool);
    this.ledger = new JdbcTemplate(ledger);
    this.ledgerTransactions = ledgerTransactions;
    this.schema = schema;
  }

  public DataSource source() {
    return pool;
  }

  public PlatformTransactionManager transactions() {
    return transactions;
  }

  /** For one worker's parts, one after another. */
  public Hold hold() {
    return new Hold(jdbc, ledger, ledgerTransactions, schema);
  }

  @Override
  public void close() {
    pool.close();
  }
}
