package rickyard.post;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.tables.TableProblem;
import rickyard.tables.UnusableTablesException;

/**
 * Which server takes the post, and who sends it: {@code config/mail.properties} of the office. User
 * and password come from the environment and are never written down.
 *
 * @param host of the server
 * @param port of the server
 * @param security how the connection is kept private
 * @param from the sender's address
 * @param fromName the sender's name; may be empty
 * @param advisers address by adviser, as clients.csv names them
 * @param user for the server; empty if it asks for none
 * @param password for the server
 */
public record MailSettings(
    String host,
    int port,
    Security security,
    String from,
    String fromName,
    SortedMap<String, String> advisers,
    String user,
    String password) {

  /** Name of the file below the office's config folder. */
  public static final String FILE = "mail.properties";

  /** Environment variable with the user. */
  public static final String USER = "RICKYARD_MAIL_USER";

  /** Environment variable with the password. */
  public static final String PASSWORD = "RICKYARD_MAIL_PASSWORD";

  private static final String ADVISER = "adviser.";
  private static final List<String> KEYS = List.of("host", "port", "security", "from", "from-name");
  private static final int SUBMISSION = 587;
  private static final int SUBMISSION_TLS = 465;
  private static final int HIGHEST_PORT = 65_535;
  private static final long LARGEST = 1L << 20;

  /** How a connection is kept private. */
  public enum Security {
    /** Private from the first command after the greeting on, or no sending. */
    STARTTLS,
    /** Private from the first byte. */
    TLS,
    /** Not private; only to a server on this machine. */
    NONE
  }

  public MailSettings {
    advisers = Collections.unmodifiableSortedMap(new TreeMap<>(advisers));
  }

  /** What is shown of it: neither user nor password. */
  @Override
  public String toString() {
    return "mail through " + host + ":" + port + " (" + security + ")";
  }

  /**
   * Reads the file.
   *
   * @param officeConfig the office's config folder
   * @param environment where user and password stand
   * @throws UnusableTablesException with everything that is wrong or missing
   */
  public static MailSettings load(Optional<Path> officeConfig, Map<String, String> environment) {
    List<TableProblem> problems = new ArrayList<>();
    Properties found = properties(officeConfig, problems);
    MailSettings settings = new Reader(found, problems).settings(environment);
    if (!problems.isEmpty()) {
      throw new UnusableTablesException(problems);
    }
    return settings;
  }

  private static Properties properties(Optional<Path> officeConfig, List<TableProblem> problems) {
    Properties found = new Properties();
    Optional<Path> file = officeConfig.map(c -> c.resolve(FILE)).filter(Files::isRegularFile);
    if (file.isEmpty()) {
      problems.add(problem("", "missing", "the file, with host and from, to send with", "none"));
      return found;
    }
    try {
      if (Files.size(file.get()) > LARGEST) {
        problems.add(problem("", "too-large", "at most 1 MiB", "more"));
        return found;
      }
      found.load(new StringReader(Files.readString(file.get(), StandardCharsets.UTF_8)));
    } catch (IOException | IllegalArgumentException e) {
      problems.add(
          problem("", "unreadable", "lines of key=value in UTF-8", String.valueOf(e.getMessage())));
    }
    return found;
  }

  private static TableProblem problem(String key, String code, String expected, String got) {
    return new TableProblem("config/" + FILE, 0, key, code, expected, got);
  }

  /** Reads the keys; everything wrong is noted, and stands as something harmless meanwhile. */
  private record Reader(Properties found, List<TableProblem> problems) {

    MailSettings settings(Map<String, String> environment) {
      if (found.isEmpty()) {
        need("host");
        need("from");
      }
      SortedMap<String, String> advisers = new TreeMap<>();
      for (String key : new TreeSet<>(found.stringPropertyNames())) {
        if (key.startsWith(ADVISER)) {
          advisers.put(key.substring(ADVISER.length()), address(key));
        } else if (!KEYS.contains(key)) {
          problems.add(
              problem(key, "unknown", String.join(", ", KEYS) + " or adviser.NAME", text(key)));
        }
      }
      Security security = security();
      return new MailSettings(
          host(security),
          port(security),
          security,
          found.isEmpty() ? "" : address("from"),
          oneLine("from-name"),
          advisers,
          environment.getOrDefault(USER, ""),
          environment.getOrDefault(PASSWORD, ""));
    }

    private String text(String key) {
      return found.getProperty(key, "").strip();
    }

    private String need(String key) {
      String text = oneLine(key);
      if (text.isEmpty() && !found.isEmpty()) {
        problems.add(problem(key, "missing", "a line " + key + "=...", ""));
      }
      return text;
    }

    private String oneLine(String key) {
      String text = text(key);
      if (text.chars().anyMatch(Character::isISOControl)) {
        problems.add(problem(key, "control-character", "one line of text", text));
        return "";
      }
      return text;
    }

    private String host(Security security) {
      String host = need("host");
      if (security == Security.NONE && !host.isEmpty() && !isHere(host)) {
        problems.add(
            problem("security", "not-private", "starttls or tls for a server elsewhere", "none"));
      }
      return host;
    }

    private static boolean isHere(String host) {
      return List.of("localhost", "127.0.0.1", "::1").contains(host);
    }

    private Security security() {
      String text = text("security").toUpperCase(Locale.ROOT);
      if (text.isEmpty()) {
        return Security.STARTTLS;
      }
      for (Security each : Security.values()) {
        if (each.name().equals(text)) {
          return each;
        }
      }
      problems.add(problem("security", "unknown", "starttls, tls or none", text("security")));
      return Security.STARTTLS;
    }

    private int port(Security security) {
      String text = text("port");
      if (text.isEmpty()) {
        return security == Security.TLS ? SUBMISSION_TLS : SUBMISSION;
      }
      if (text.matches("[0-9]{1,5}") && Integer.parseInt(text) <= HIGHEST_PORT) {
        return Integer.parseInt(text);
      }
      problems.add(problem("port", "not-a-port", "a number from 1 to 65535", text));
      return SUBMISSION;
    }

    private String address(String key) {
      String text = need(key);
      try {
        if (!text.isEmpty()) {
          return new InternetAddress(text, true).getAddress();
        }
      } catch (AddressException e) {
        problems.add(problem(key, "not-an-address", "one e-mail address", text));
      }
      return "";
    }
  }
}
