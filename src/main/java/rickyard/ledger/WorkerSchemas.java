package rickyard.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/** Finds the schema of the office that a worker is to read for. */
final class WorkerSchemas {
  private static final String OFFICES =
      "SELECT n.nspname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace"
          + " WHERE c.relname = '"
          + ServerSchema.MARK
          + "' AND c.relkind = 'r' AND has_schema_privilege(n.oid, 'USAGE') ORDER BY 1";

  private final DatabaseAddress address;
  private final Optional<String> office;

  /**
   * Prepares the search.
   *
   * @param office the office's id, where its folder is at hand and has one
   */
  WorkerSchemas(DatabaseAddress address, Optional<String> office) {
    this.address = address;
    this.office = office;
  }

  /**
   * The schema; empty where no run has made it yet.
   *
   * @throws LedgerException if the server refuses, it is another office's, or it could be any of
   *     several
   */
  Optional<String> find() {
    ServerFaults faults = new ServerFaults(address);
    try (Connection connection =
        address.source(address.schema().orElse("public")).getConnection()) {
      return chosen(new JdbcTemplate(new SingleConnectionDataSource(connection, true)));
    } catch (SQLException e) {
      throw faults.atConnecting(e);
    } catch (RuntimeException e) {
      throw faults.of(e).map(RuntimeException.class::cast).orElse(e);
    }
  }

  private Optional<String> chosen(JdbcTemplate jdbc) {
    List<String> there = jdbc.queryForList(OFFICES, String.class);
    Optional<String> named = address.schema().or(() -> office.map(id -> "rickyard_" + id));
    if (named.isPresent()) {
      Optional<String> found = named.filter(there::contains);
      found.ifPresent(schema -> requireOwn(jdbc, schema));
      return found;
    }
    if (there.size() > 1) {
      throw new LedgerException(
          "There are "
              + there.size()
              + " offices in "
              + address.words()
              + "; name the office's folder, or its schema in --ledger with ?currentSchema=NAME.");
    }
    return there.stream().findFirst();
  }

  private void requireOwn(JdbcTemplate jdbc, String schema) {
    List<String> ids =
        jdbc.queryForList("SELECT id FROM " + schema + "." + ServerSchema.MARK, String.class);
    if (office.isPresent() && !ids.contains(office.get())) {
      throw new LedgerException(
          "The schema "
              + schema
              + " in "
              + address.words()
              + " belongs to another office than the folder; name the one or the other.");
    }
  }
}
