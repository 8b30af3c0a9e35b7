package rickyard.ledger;

import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * One part in the hands of one worker.
 *
 * <p>The message that names the part, and the right to be inside, hang on the channel's
 * transaction: whatever ends that connection gives both back at once. The documents are written by
 * other transactions. So each of these asks first whether the channel's is still there, under a
 * lock that whoever takes the part next waits for: what the one before still writes is written
 * before the next one looks, and nothing after it.
 */
public final class Hold {
  private static final String ENTER =
      "SELECT CASE WHEN to_regclass('worker_task') IS NULL THEN 0"
          + " WHEN pg_try_advisory_xact_lock_shared(?) THEN pg_backend_pid() ELSE 0 END";

  private final JdbcTemplate channel;
  private final JdbcTemplate jdbc;
  private final TransactionTemplate apart;
  private final String schema;
  private int inside;

  Hold(
      JdbcTemplate channel,
      JdbcTemplate jdbc,
      PlatformTransactionManager transactions,
      String schema) {
    this.channel = channel;
    this.jdbc = jdbc;
    this.apart = new TransactionTemplate(transactions);
    this.schema = schema;
  }

  /** Goes inside until the channel's transaction ends; not where a run wants nobody there. */
  public boolean isInside() {
    inside = number(channel, ENTER, AdvisoryKey.gate(schema));
    return inside > 0;
  }

  /** Waits for what a worker before this one still writes of a part. */
  public void take(long part) {
    apart.executeWithoutResult(
        t ->
            jdbc.query(
                "SELECT pg_advisory_xact_lock(?)", row -> {}, AdvisoryKey.part(schema, part)));
  }

  /**
   * Called in a document's transaction before anything else.
   *
   * @throws LedgerException if the part is no longer this worker's, or a run wants nobody inside
   */
  public void require(long part) {
    if (!isTaken(AdvisoryKey.gate(schema))
        || !isTaken(AdvisoryKey.part(schema, part))
        || number(
                jdbc,
                "SELECT COUNT(*) FROM pg_locks WHERE pid = ? AND " + AdvisoryKey.HELD,
                inside,
                AdvisoryKey.gate(schema))
            == 0) {
      throw new LedgerException("The part was given back; another worker or the run has it.");
    }
  }

  private boolean isTaken(long key) {
    return Optional.ofNullable(
            jdbc.queryForObject("SELECT pg_try_advisory_xact_lock_shared(?)", Boolean.class, key))
        .orElse(false);
  }

  private static int number(JdbcTemplate jdbc, String sql, Object... arguments) {
    Integer number = jdbc.queryForObject(sql, Integer.class, arguments);
    return number == null ? 0 : number;
  }
}
