package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * The database of a test's ledger: a file, or where the property {@code rickyard.test.postgresql}
 * names a server, a schema there for each ledger folder. The schemas are dropped when the tests
 * end.
 */
public final class TestIndex {
  /** What the tests end is theirs alone, whoever else works on that server. */
  public static final String OWN_NAME = "rickyard_tests";

  private static final String GIVEN = System.getProperty("rickyard.test.postgresql", "");
  private static final String SERVER =
      GIVEN.isEmpty()
          ? ""
          : GIVEN + (GIVEN.contains("?") ? "&" : "?") + "ApplicationName=" + OWN_NAME;
  private static final Set<String> MADE = new ConcurrentSkipListSet<>();

  static {
    if (isOnServer()) {
      Runtime.getRuntime().addShutdownHook(new Thread(TestIndex::dropAll));
    }
  }

  private TestIndex() {}

  public static boolean isOnServer() {
    return !SERVER.isEmpty();
  }

  /** The server as the program is told of it. */
  public static String url() {
    return SERVER;
  }

  /** Where the ledger of a folder is. */
  public static LedgerPlace place(Path folder) {
    return new LedgerPlace(folder, address(folder));
  }

  /** The server's address with the schema of a ledger folder; empty where files are tested. */
  public static Optional<DatabaseAddress> address(Path folder) {
    return isOnServer() ? Optional.of(withSchema(SERVER, schema(folder))) : Optional.empty();
  }

  static DatabaseAddress withSchema(String url, String schema) {
    MADE.add(schema);
    return DatabaseAddress.parse(url + "&currentSchema=" + schema, System.getenv());
  }

  static String schema(Path folder) {
    String path = folder.toAbsolutePath().normalize().toString();
    return "t_" + Seal.of(path).substring(0, 32);
  }

  /** Changes the database of a closed ledger, as if a run had been killed after it. */
  public static void change(Path folder, String sql) throws SQLException {
    try (Connection connection = connection(folder);
        Statement statement = connection.createStatement()) {
      assertTrue(statement.executeUpdate(sql) > 0, sql);
    }
  }

  private static Connection connection(Path folder) throws SQLException {
    if (isOnServer()) {
      return address(folder).orElseThrow().source(schema(folder)).getConnection();
    }
    try {
      ClosedMark.lift(folder.resolve("db"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return DriverManager.getConnection(
        "jdbc:h2:file:"
            + folder.resolve("db/rickyard").toAbsolutePath()
            + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE",
        "rickyard",
        "");
  }

  /** Loses the database of a closed ledger. */
  public static void lose(Path folder) {
    try {
      if (isOnServer()) {
        drop(schema(folder));
        drop("rickyard_" + OfficeId.of(folder));
      } else {
        Files.delete(folder.resolve("db").resolve(ClosedMark.DATABASE));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Runs statements on the server, in no schema of an office. */
  public static void onServer(String... statements) {
    try (Connection connection =
            DatabaseAddress.parse(SERVER, System.getenv()).source("public").getConnection();
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** One value from the server. */
  public static String ask(String sql) {
    try (Connection connection =
            DatabaseAddress.parse(SERVER, System.getenv()).source("public").getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      assertTrue(rows.next(), sql);
      return rows.getString(1);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The schema of an office whose run made it. */
  public static String ownSchema(Path folder) {
    return "rickyard_" + OfficeId.find(folder).orElseThrow();
  }

  /** Ends every connection of the tests' runs; they run one at a time there. */
  public static void endSessions() {
    onServer(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = '"
            + OWN_NAME
            + "' AND pid <> pg_backend_pid()");
  }

  private static void drop(String schema) {
    onServer("SET client_min_messages = error", "DROP SCHEMA IF EXISTS " + schema + " CASCADE");
  }

  private static void dropAll() {
    MADE.forEach(TestIndex::drop);
  }
}
