package rickyard.ledger;

import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.postgresql.Driver;
import org.postgresql.PGProperty;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A PostgreSQL database that keeps the index of a ledger in the place of a file.
 *
 * <p>User and password go to the server alone: no text that this gives holds them.
 */
public final class DatabaseAddress {
  /** Environment variables with what the address itself does not say. */
  public static final String USER = "RICKYARD_LEDGER_USER";

  public static final String PASSWORD = "RICKYARD_LEDGER_PASSWORD";

  private static final String SHAPE =
      "--ledger takes a folder or jdbc:postgresql://HOST[:PORT]/DATABASE";
  private static final Pattern SCHEME = Pattern.compile("(?i)(jdbc:[a-z0-9]*|[a-z0-9+.-]+:(?=//))");
  private static final Pattern URL =
      Pattern.compile("jdbc:postgresql://([^/?@\\s]+)/([^/?\\s]+)(\\?\\S*)?");
  private static final Pattern SCHEMA = Pattern.compile("[a-z_][a-z0-9_]{0,62}");

  /** A machine that vanished frees its lock within a minute; no wait is for ever. */
  private static final String SESSION =
      "-c tcp_keepalives_idle=30 -c tcp_keepalives_interval=10 -c tcp_keepalives_count=3"
          + " -c lock_timeout=30s";

  private static final int CONNECT_SECONDS = 10;
  private static final int ANSWER_SECONDS = 120;

  /** The driver's own words may quote the address; held here so that it stays silent. */
  private static final Logger SILENT = Logger.getLogger("org.postgresql");

  static {
    SILENT.setLevel(Level.OFF);
  }

  private final String url;
  private final Properties given;
  private final String words;
  private final Optional<String> user;
  private final Optional<String> password;

  private DatabaseAddress(
      String url, Properties given, String words, Map<String, String> environment) {
    this.url = url;
    this.given = given;
    this.words = words;
    this.user = Optional.ofNullable(environment.get(USER)).filter(s -> !s.isEmpty());
    this.password = Optional.ofNullable(environment.get(PASSWORD)).filter(s -> !s.isEmpty());
  }

  /** Whether a text is meant as the address of a database: folders have no scheme. */
  public static boolean isMeant(String text) {
    return SCHEME.matcher(text).lookingAt();
  }

  /**
   * Reads an address.
   *
   * @param text {@code jdbc:postgresql://HOST[:PORT]/DATABASE[?NAME=VALUE&…]}
   * @param environment may hold {@link #USER} and {@link #PASSWORD}, which count where the address
   *     has none
   * @throws IllegalArgumentException with a sentence that quotes no more than the scheme
   */
  public static DatabaseAddress parse(String text, Map<String, String> environment) {
    Matcher scheme = SCHEME.matcher(text);
    String found = scheme.lookingAt() ? scheme.group() : "";
    if (!found.equals("jdbc:postgresql")) {
      throw new IllegalArgumentException(SHAPE + ", not " + found);
    }
    Matcher shape = URL.matcher(text);
    if (!shape.matches()) {
      throw new IllegalArgumentException(
          SHAPE
              + "; user and password go into "
              + USER
              + " and "
              + PASSWORD
              + ", or behind a question mark");
    }
    Properties given = Driver.parseURL(text, new Properties());
    if (given == null) {
      throw new IllegalArgumentException(SHAPE + "; the port is a number");
    }
    String schema = PGProperty.CURRENT_SCHEMA.getOrDefault(given);
    if (schema != null && !SCHEMA.matcher(schema).matches()) {
      throw new IllegalArgumentException(
          "currentSchema in --ledger is one plain name in small letters, digits and _");
    }
    String words = "the PostgreSQL database " + shape.group(2) + " at " + shape.group(1);
    return new DatabaseAddress(text, given, words, environment);
  }

  /** Where it is, as part of a sentence. */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words;
  }

  /** The schema that it names; usually none, and the office has one of its own. */
  Optional<String> schema() {
    return Optional.ofNullable(PGProperty.CURRENT_SCHEMA.getOrDefault(given));
  }

  /** Gives connections that see one schema only. */
  PGSimpleDataSource source(String schema) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setURL(url);
    source.setCurrentSchema(schema);
    source.setTcpKeepAlive(true);
    if (!PGProperty.APPLICATION_NAME.isPresent(given)) {
      source.setApplicationName("rickyard");
    }
    if (!PGProperty.USER.isPresent(given)) {
      user.ifPresent(source::setUser);
    }
    if (!PGProperty.PASSWORD.isPresent(given)) {
      password.ifPresent(source::setPassword);
    }
    if (!PGProperty.CONNECT_TIMEOUT.isPresent(given)) {
      source.setConnectTimeout(CONNECT_SECONDS);
    }
    if (!PGProperty.SOCKET_TIMEOUT.isPresent(given)) {
      source.setSocketTimeout(ANSWER_SECONDS);
    }
    if (!PGProperty.OPTIONS.isPresent(given)) {
      source.setOptions(SESSION);
    }
    return source;
  }
}
