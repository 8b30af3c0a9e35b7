package rickyard.report.text;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The texts of sheets and letters in one language, with their numbers and days. */
public final class Phrases {
  /** What is filled in: a word in braces. */
  static final Pattern FILLED = Pattern.compile("\\{([a-z]+)}");

  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  private final String language;
  private final SortedMap<String, String> texts;

  Phrases(String language, Map<String, String> texts) {
    this.language = requireNonNull(language, "language");
    this.texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
  }

  /** Its code, for example {@code en}. */
  public String language() {
    return language;
  }

  SortedMap<String, String> texts() {
    return texts;
  }

  /** The text of a key; a template that asks for one that is not there is broken. */
  public String text(String key) {
    return find(key)
        .orElseThrow(() -> new IllegalArgumentException("there is no text \"" + key + "\""));
  }

  /**
   * The text of a key with its words in braces filled in, each once: what was filled in is never
   * looked at again.
   *
   * @param namesAndValues the word without braces, then what takes its place, and so on
   */
  public String say(String key, String... namesAndValues) {
    Map<String, String> values = new TreeMap<>();
    for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
      values.put(namesAndValues[i], namesAndValues[i + 1]);
    }
    Matcher matcher = FILLED.matcher(text(key));
    return matcher.replaceAll(
        m -> Matcher.quoteReplacement(values.getOrDefault(m.group(1), m.group())));
  }

  public Optional<String> find(String key) {
    return Optional.ofNullable(texts.get(key));
  }

  /** The words for a code; a code without words is shown as it is. */
  public String word(String kind, String code) {
    return find(kind + "." + code.replace(' ', '_')).orElseGet(() -> Harmless.line(code));
  }

  /** Numbers in a text of ours, written as the language writes them. */
  public String numbers(String text) {
    return POINT.matcher(text).replaceAll(Matcher.quoteReplacement(text("number.decimal")));
  }

  public String day(LocalDate day) {
    return say(
        "day",
        "day",
        String.valueOf(day.getDayOfMonth()),
        "month",
        say("month." + day.getMonthValue()),
        "year",
        String.valueOf(day.getYear()));
  }
}
