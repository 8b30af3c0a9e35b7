package rickyard.report.text;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences for people: the codes in them, which CSV and JSON keep for programs, in words. Text
 * that is no code is left as it is: a code is a whole run of letters, digits, hyphens and
 * underscores.
 */
public final class Plain {
  private static final Set<String> CODES = Set.copyOf(Words.codes("say"));
  private static final Set<String> FIGURES = Set.copyOf(Words.codes("figure"));

  /** What a proposal falls short of, as codes. */
  private static final Pattern SHORT =
      Pattern.compile("(?<=falls short of )[A-Z_]+(?:, [A-Z_]+)*(?=[,.;]| and |$)");

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
    String named =
        said.contains("falls short of ")
            ? SHORT
                .matcher(said)
                .replaceAll(m -> Matcher.quoteReplacement(replaced(FIGURES, "figure", m.group())))
            : said;
    return named.replace(".; ", "; ");
  }

  private static String replaced(Set<String> codes, String kind, String text) {
    StringBuilder said = new StringBuilder(text.length());
    int copied = 0;
    int from = 0;
    while (from < text.length()) {
      int to = endOfRun(text, from);
      String run = text.substring(from, to);
      if (codes.contains(run)) {
        said.append(text, copied, from).append(Words.of(kind, run));
        copied = to;
      }
      from = to == from ? from + Character.charCount(text.codePointAt(from)) : to;
    }
    return copied == 0 ? text : said.append(text, copied, text.length()).toString();
  }

  private static int endOfRun(String text, int from) {
    int at = from;
    while (at < text.length()) {
      int c = text.codePointAt(at);
      if (!isOfRun(c)) {
        return at;
      }
      at += Character.charCount(c);
    }
    return at;
  }

  private static boolean isOfRun(int c) {
    if (c < 0x80) {
      return (c >= 'a' && c <= 'z')
          || (c >= 'A' && c <= 'Z')
          || (c >= '0' && c <= '9')
          || c == '-'
          || c == '_';
    }
    return switch (Character.getType(c)) {
      case Character.DECIMAL_DIGIT_NUMBER, Character.LETTER_NUMBER, Character.OTHER_NUMBER -> true;
      default -> Character.isLetter(c);
    };
  }
}
