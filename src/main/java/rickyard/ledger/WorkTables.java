package rickyard.ledger;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * The tables by which a run on a server hands documents to workers. They hold something only while
 * workers read and are emptied by the next run at the latest: nothing rests on them. They are made
 * when workers are first asked for, so no ledger has to be migrated for them.
 */
final class WorkTables {
  private static final String MESSAGES = "int_channel_message";
  private static final String TASK = "worker_task";
  private static final String DOCUMENTS = "worker_document";

  static final List<String> TABLES = List.of(MESSAGES, TASK, DOCUMENTS);
  static final String SEQUENCE = "int_message_seq";

  /** The channel's own table, unchanged; documents are not worth a log for a server's crash. */
  private static final List<String> MAKE =
      List.of(
          "CREATE SEQUENCE IF NOT EXISTS " + SEQUENCE + " START WITH 1 INCREMENT BY 1 NO CYCLE",
          "CREATE TABLE IF NOT EXISTS "
              + MESSAGES
              + " (message_id CHAR(36) NOT NULL, group_key CHAR(36) NOT NULL,"
              + " created_date BIGINT NOT NULL, message_priority BIGINT,"
              + " message_sequence BIGINT NOT NULL DEFAULT nextval('int_message_seq'),"
              + " message_content BYTEA, region VARCHAR(100) NOT NULL,"
              + " CONSTRAINT int_channel_message_pk"
              + " PRIMARY KEY (region, group_key, created_date, message_sequence))",
          "CREATE INDEX IF NOT EXISTS int_channel_msg_delete_idx ON "
              + MESSAGES
              + " (region, group_key, message_id)",
          "CREATE UNLOGGED TABLE IF NOT EXISTS "
              + DOCUMENTS
              + " (sha256 VARCHAR(64) PRIMARY KEY, content BYTEA NOT NULL)",
          // Last: where it is there, the others are.
          "CREATE TABLE IF NOT EXISTS " + TASK + " (name VARCHAR(40) PRIMARY KEY, value TEXT)");

  private final JdbcTemplate jdbc;

  WorkTables(JdbcTemplate jdbc) {
    this.jdbc = jdbc;
  }

  boolean areThere() {
    return Boolean.TRUE.equals(
        jdbc.queryForObject("SELECT to_regclass('" + TASK + "') IS NOT NULL", Boolean.class));
  }

  void make() {
    jdbc.execute("SET client_min_messages = warning; " + String.join("; ", MAKE));
  }

  /** Throws away what an earlier run left; nobody is inside. */
  void empty() {
    if (areThere()) {
      jdbc.execute("TRUNCATE " + String.join(", ", TABLES));
    }
  }

  void put(Task task) {
    task.toMap()
        .forEach(
            (name, value) ->
                jdbc.update("INSERT INTO " + TASK + " (name, value) VALUES (?, ?)", name, value));
  }

  /** What is wanted read; empty where nothing is. */
  Optional<Task> task() {
    Map<String, String> named = new TreeMap<>();
    jdbc.query(
        "SELECT name, value FROM " + TASK,
        row -> {
          named.put(row.getString(1), row.getString(2));
        });
    return named.isEmpty() ? Optional.empty() : Optional.of(Task.of(named));
  }

  void put(String sha256, byte[] content) {
    jdbc.update("INSERT INTO " + DOCUMENTS + " (sha256, content) VALUES (?, ?)", sha256, content);
  }

  Optional<byte[]> document(String sha256) {
    return jdbc
        .query(
            "SELECT content FROM " + DOCUMENTS + " WHERE sha256 = ?",
            (row, n) -> row.getBytes(1),
            sha256)
        .stream()
        .findFirst();
  }

  /** What is read is no longer handed out. */
  void drop(String sha256) {
    jdbc.update("DELETE FROM " + DOCUMENTS + " WHERE sha256 = ?", sha256);
  }

  int documents() {
    Integer count = jdbc.queryForObject("SELECT COUNT(*) FROM " + DOCUMENTS, Integer.class);
    return count == null ? 0 : count;
  }
}
