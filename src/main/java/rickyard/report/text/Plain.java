package rickyard.report.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Sentences for people: the codes in them, which CSV and JSON keep for programs, in words. Text
 * that is no code is left as it is.
 */
public final class Plain {
  private static final Pattern CODES =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}_-])("
              + Words.codes("say").stream().map(Pattern::quote).collect(Collectors.joining("|"))
              + ")(?![\\p{L}\\p{N}_-])");

  private Plain() {}

  /** On one line, with words in the place of codes. */
  public static String line(String raw) {
    return words(Harmless.line(raw));
  }

  /** The same, ended like a sentence. */
  public static String sentence(String raw) {
    return Harmless.sentence(words(raw));
  }

  private static String words(String text) {
    Matcher found = CODES.matcher(text);
    return found.replaceAll(m -> Matcher.quoteReplacement(Words.of("say", m.group(1))));
  }
}
