package rickyard.ledger;

import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;

/** The schema of one office on a server: made for it, marked as its own, emptied by name. */
final class ServerSchema {
  /** Tells whose schema it is; not one of the tables that are made anew. */
  static final String MARK = "rickyard_office";

  /** What the migrations make, theirs included; a test holds the list. */
  static final List<String> TABLES =
      List.of(
          "batch_step_execution_context",
          "batch_job_execution_context",
          "batch_step_execution",
          "batch_job_execution_params",
          "batch_job_execution",
          "batch_job_instance",
          "morning",
          "arrival",
          "reading",
          "stage",
          Database.HISTORY);

  static final List<String> SEQUENCES =
      List.of("batch_step_execution_seq", "batch_job_execution_seq", "batch_job_instance_seq");

  private final DatabaseAddress address;
  private final String schema;
  private final JdbcTemplate jdbc;

  ServerSchema(DatabaseAddress address, String schema, JdbcTemplate jdbc) {
    this.address = address;
    this.schema = schema;
    this.jdbc = jdbc;
  }

  String name() {
    return schema;
  }

  /**
   * Sees that it is there and the office's.
   *
   * @throws LedgerException where it is another's, or holds what is not ours
   */
  void make(String office) {
    if (count("SELECT COUNT(*) FROM pg_namespace WHERE nspname = ?", schema) == 0) {
      jdbc.execute("CREATE SCHEMA " + schema);
    }
    if (hasTable(MARK)) {
      requireOwn(office);
    } else {
      requireNoneOfOthers();
      // One statement, one transaction: whatever has tables of ours is marked as ours.
      jdbc.execute(
          "CREATE TABLE "
              + MARK
              + " (id VARCHAR(32) PRIMARY KEY);"
              + " INSERT INTO "
              + MARK
              + " VALUES ('"
              + office
              + "')");
    }
    if (count(
            "SELECT COUNT(*) FROM pg_type t JOIN pg_namespace n ON n.oid = t.typnamespace"
                + " WHERE n.nspname = ? AND t.typname = 'longvarchar'",
            schema)
        == 0) {
      // The migrations are the same for both databases; this one does not know that word of theirs.
      jdbc.execute("CREATE DOMAIN longvarchar AS TEXT");
    }
  }

  private void requireOwn(String office) {
    List<String> ids = jdbc.queryForList("SELECT id FROM " + MARK, String.class);
    if (!ids.equals(List.of(office))) {
      throw new LedgerException(
          "The schema "
              + schema
              + " in "
              + address.words()
              + " belongs to another office; leave out currentSchema, or name a schema for this"
              + " office alone.");
    }
  }

  private void requireNoneOfOthers() {
    if (count(
            "SELECT COUNT(*) FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace"
                + " WHERE n.nspname = ?",
            schema)
        > 0) {
      throw new LedgerException(
          "The schema "
              + schema
              + " in "
              + address.words()
              + " holds what is not this office's; leave out currentSchema, or name an empty"
              + " schema.");
    }
  }

  boolean hasTable(String table) {
    return count(
            "SELECT COUNT(*) FROM pg_tables WHERE schemaname = ? AND tablename = ?", schema, table)
        > 0;
  }

  private int count(String sql, Object... arguments) {
    Integer count = jdbc.queryForObject(sql, Integer.class, arguments);
    return count == null ? 0 : count;
  }

  /** What a later version made is not removed: it may have tables that this one does not know. */
  void requireNoneNewer() {
    if (Database.version(jdbc, schema) > Head.FORMAT) {
      throw LedgerException.newer();
    }
  }

  /** Removes what the migrations made, by name; anything else in the schema stays. */
  void empty() {
    jdbc.execute(
        "DROP TABLE IF EXISTS "
            + String.join(", ", TABLES)
            + ", "
            + String.join(", ", WorkTables.TABLES)
            + "; DROP SEQUENCE IF EXISTS "
            + String.join(", ", SEQUENCES)
            + ", "
            + WorkTables.SEQUENCE);
  }
}
