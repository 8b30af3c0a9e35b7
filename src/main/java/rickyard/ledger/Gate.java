package rickyard.ledger;

import java.sql.SQLException;
import java.util.function.Consumer;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * What lets workers in to an office on a server. A run closes it before anything else and opens it
 * only while it waits for workers: whatever a dead run left is looked at, thrown away or gone on
 * with while nobody else is inside. It is a lock of the run's session; after a kill it is open, and
 * workers do what is left.
 */
final class Gate {
  /** How long workers are waited for; each leaves at its next document. */
  private static final int PATIENCE = 20;

  private static final int SECONDS = 15;
  private static final String WAITED_TOO_LONG = "55P03";

  private final JdbcTemplate session;
  private final long key;
  private boolean closed;

  Gate(JdbcTemplate session, String schema) {
    this.session = session;
    this.key = AdvisoryKey.gate(schema);
  }

  /**
   * Waits until the last worker is out.
   *
   * @param voice told when it takes long
   * @throws LedgerException if one stays
   */
  void close(Consumer<String> voice) {
    for (int tried = 1; !closed && !takes(); tried++) {
      if (tried == PATIENCE) {
        throw LedgerException.held(
            "A worker has had a document of this office in hand for minutes; wait until it is"
                + " read, or end that worker, then run the same command again.");
      }
      voice.accept("wait     for workers to put down what they read");
    }
    closed = true;
  }

  private boolean takes() {
    session.execute("SET lock_timeout = '" + SECONDS + "s'");
    try {
      session.query("SELECT pg_advisory_lock(?)", row -> {}, key);
      return true;
    } catch (DataAccessException e) {
      if (e.getRootCause() instanceof SQLException sql
          && WAITED_TOO_LONG.equals(sql.getSQLState())) {
        return false;
      }
      throw e;
    } finally {
      session.execute("RESET lock_timeout");
    }
  }

  void open() {
    closed = false;
    session.query("SELECT pg_advisory_unlock(?)", row -> {}, key);
  }
}
