package rickyard.ledger;

import java.util.List;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** What a run shares with workers on other machines; only an index on a server can. */
public final class Sharing {
  private final ServerSession session;
  private final ServerDatabase database;
  private final WorkTables tables;

  Sharing(ServerSession session, ServerDatabase database) {
    this.session = session;
    this.database = database;
    this.tables = new WorkTables(database.jdbc());
  }

  /**
   * Workers that are there.
   *
   * @param all of this office
   * @param fit whose reader is the run's
   */
  public record Workers(int all, int fit) {}

  /**
   * Hands documents out and lets workers in.
   *
   * @param task what is wanted
   * @param documents hashes of what nobody has read yet, each once
   * @param originals where their bytes are
   */
  public void open(Task task, List<String> documents, Originals originals) {
    tables.make();
    tables.empty();
    new TransactionTemplate(database.transactions())
        .executeWithoutResult(
            t -> {
              documents.forEach(sha256 -> tables.put(sha256, originals.read(sha256)));
              tables.put(task);
            });
    session.gate().open();
  }

  /**
   * Waits until every worker has put down what it reads, and takes the rest back.
   *
   * @param voice told when that takes long
   */
  public void close(Consumer<String> voice) {
    session.gate().close(voice);
    tables.empty();
  }

  /** How many documents are not read yet. */
  public int left() {
    return tables.documents();
  }

  /** Who is there for a reader. */
  public Workers workers(String reader) {
    String schema = session.schema().name();
    return new Workers(
        holders(AdvisoryKey.workers(schema)), holders(AdvisoryKey.workers(schema, reader)));
  }

  private int holders(long key) {
    JdbcTemplate jdbc = database.jdbc();
    Integer count =
        jdbc.queryForObject(
            "SELECT COUNT(*) FROM pg_locks WHERE " + AdvisoryKey.HELD, Integer.class, key);
    return count == null ? 0 : count;
  }

  /** Nothing more is handed out of a document that is read. */
  public void drop(String sha256) {
    tables.drop(sha256);
  }

  /**
   * Opens the channel's connections; the caller closes them.
   *
   * @param most at a time
   */
  public Channel channel(int most) {
    return new Channel(
        session.source(),
        most,
        database.source(),
        database.transactions(),
        session.schema().name());
  }
}
