package rickyard.report.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The languages of sheets and letters: those that come with the program, with the office's changes,
 * and those that the office adds. What a language lacks is said in English.
 */
public final class Languages {
  /** The language of whoever named none, and of everything that another one lacks. */
  public static final String FIRST = "en";

  /** Names of files of texts. */
  public static final Pattern FILE = Pattern.compile("texts_([a-z]{2,3})\\.properties");

  private static final List<String> BUILT_IN = List.of(FIRST, "de");

  private final SortedMap<String, Phrases> languages = new TreeMap<>();

  /**
   * All of them.
   *
   * @param office the office's templates by name; those that are no texts are passed over
   * @throws BrokenTemplateException naming file and line
   */
  public Languages(SortedMap<String, String> office) {
    Map<String, String> english = builtIn(FIRST);
    languages.put(FIRST, new Phrases(FIRST, english));
    for (String language : BUILT_IN) {
      Map<String, String> texts = new TreeMap<>(english);
      texts.putAll(builtIn(language));
      languages.put(language, new Phrases(language, texts));
    }
    office.forEach(this::add);
  }

  private void add(String name, String text) {
    Matcher file = FILE.matcher(name);
    if (file.matches()) {
      String language = file.group(1);
      Map<String, String> texts = new TreeMap<>(of(language).texts());
      texts.putAll(checked(name, text));
      languages.put(language, new Phrases(language, texts));
    }
  }

  /** The texts of a language; English for one that nobody gave texts for. */
  public Phrases of(String language) {
    return languages.getOrDefault(knows(language) ? language : FIRST, english());
  }

  public boolean knows(String language) {
    return languages.containsKey(language);
  }

  private Phrases english() {
    return Optional.ofNullable(languages.get(FIRST)).orElseThrow();
  }

  /** The texts of one language as they come with the program, without what English adds. */
  static Map<String, String> builtIn(String language) {
    String file = "texts_" + language + ".properties";
    try (InputStream in = Languages.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is missing");
      }
      return read(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> read(Reader reader) throws IOException {
    Properties properties = new Properties();
    properties.load(reader);
    Map<String, String> texts = new TreeMap<>();
    properties.stringPropertyNames().forEach(k -> texts.put(k, properties.getProperty(k).strip()));
    return texts;
  }

  private Map<String, String> checked(String name, String text) {
    Map<String, String> known = english().texts();
    try {
      Map<String, String> texts = read(new StringReader(text));
      texts.forEach((key, words) -> check(name, text, key, words, known.get(key)));
      return texts;
    } catch (IllegalArgumentException e) {
      throw new BrokenTemplateException(name, lineOf(text, "\\u"), "a \\u without four digits", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void check(
      String name,
      String text,
      String key,
      String words,
      @org.jspecify.annotations.Nullable String known) {
    boolean isOpen =
        key.startsWith("watch.") || key.startsWith("role.") || key.startsWith("group.");
    if (known == null && isOpen) {
      return;
    }
    if (known == null) {
      throw new BrokenTemplateException(
          name, lineOf(text, key), "there is no text \"" + Cut.line(key, 60) + "\"");
    }
    Matcher filled = Phrases.FILLED.matcher(words);
    while (filled.find()) {
      if (!known.contains(filled.group())) {
        throw new BrokenTemplateException(
            name,
            lineOf(text, key),
            filled.group() + " is not filled in here; the built-in text is: " + known);
      }
    }
  }

  /** The first line that begins with a key or holds a piece, from 1; 0 if there is none. */
  private static int lineOf(String text, String piece) {
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      boolean isKey =
          piece.startsWith("\\") ? lines.get(i).contains(piece) : isKey(lines.get(i), piece);
      if (isKey) {
        return i + 1;
      }
    }
    return 0;
  }

  private static boolean isKey(String line, String key) {
    String bare = line.strip();
    return bare.startsWith(key) && bare.substring(key.length()).matches("\\s*[=:].*|\\s.*|");
  }
}
