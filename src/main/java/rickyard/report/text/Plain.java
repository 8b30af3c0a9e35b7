package rickyard.report.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Sentences for people: the codes in them, which CSV and JSON keep for programs, in words. Text
 * that is no code is left as it is.
 */
public final class Plain {
  private static final Pattern CODES = codes("say");

  /** What a proposal falls short of, as codes. */
  private static final Pattern SHORT =
      Pattern.compile("(?<=falls short of )[A-Z_]+(?:, [A-Z_]+)*(?=[,.;]| and |$)");

  private static final Pattern FIGURES = codes("figure");
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|[^\"]+|\"");

  private Plain() {}

  /** On one line, with words in the place of codes. */
  public static String line(String raw) {
    return words(Harmless.line(raw));
  }

  /** The same, ended like a sentence. */
  public static String sentence(String raw) {
    return Harmless.sentence(words(raw));
  }

  /**
   * A question about figures: their codes in words too, but not where a report is quoted.
   *
   * @param raw one line is made of it
   */
  public static String figures(String raw) {
    return QUOTED
        .matcher(line(raw))
        .replaceAll(
            m ->
                Matcher.quoteReplacement(
                    m.group().startsWith("\"")
                        ? m.group()
                        : replaced(FIGURES, "figure", m.group())));
  }

  private static String words(String text) {
    String said = replaced(CODES, "say", text);
    return SHORT
        .matcher(said)
        .replaceAll(m -> Matcher.quoteReplacement(replaced(FIGURES, "figure", m.group())))
        .replace(".; ", "; ");
  }

  private static String replaced(Pattern codes, String kind, String text) {
    return codes
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(Words.of(kind, m.group(1))));
  }

  private static Pattern codes(String kind) {
    String all = Words.codes(kind).stream().map(Pattern::quote).collect(Collectors.joining("|"));
    return Pattern.compile("(?<![\\p{L}\\p{N}_-])(" + all + ")(?![\\p{L}\\p{N}_-])");
  }
}
