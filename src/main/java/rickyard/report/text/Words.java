package rickyard.report.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;

/** Codes as people say them, from words.properties; a code that is not there is shown as it is. */
public final class Words {
  private static final Properties WORDS = load();

  private Words() {}

  /**
   * The words for a code.
   *
   * @param kind what sort of code: quantity, unit, group, verdict …
   * @param code the code, from wherever it came
   */
  public static String of(String kind, String code) {
    String known = WORDS.getProperty(kind + "." + code.replace(' ', '_'));
    return known == null ? Harmless.line(code) : known.strip();
  }

  /** The words for a code; empty where there are none. */
  public static Optional<String> find(String kind, String code) {
    return Optional.ofNullable(WORDS.getProperty(kind + "." + code.replace(' ', '_')))
        .map(String::strip);
  }

  /** The same for several, separated by commas. */
  public static String all(String kind, Collection<String> codes) {
    return codes.stream().map(code -> of(kind, code)).collect(Collectors.joining(", "));
  }

  /** The codes of one sort, the longest first. */
  static List<String> codes(String kind) {
    return WORDS.stringPropertyNames().stream()
        .filter(name -> name.startsWith(kind + "."))
        .map(name -> name.substring(kind.length() + 1))
        .sorted(Comparator.comparing((String code) -> -code.length()).thenComparing(c -> c))
        .toList();
  }

  private static Properties load() {
    Properties words = new Properties();
    try (InputStream in = Words.class.getResourceAsStream("words.properties")) {
      if (in == null) {
        throw new IllegalStateException("words.properties is missing");
      }
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }
}
