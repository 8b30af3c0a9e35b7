package rickyard.intake.interpret;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/**
 * What the report says its own marks in place of a figure stand for: 'n.d. = not determined'. The
 * same letters mean 'not detected' elsewhere, which is a figure; only the report can tell.
 */
final class Legend {
  private static final Pattern ENTRY =
      Pattern.compile(
          "(?<![\\p{L}0-9])(?<sign>\\p{L}(?:[./]?\\s?\\p{L}){0,3}[.]?)\\s*[=:]\\s*(?<text>[^;|=:]+)");
  private static final Set<Kind> KINDS = EnumSet.of(Kind.QUALIFIER, Kind.FILLER);

  private final Map<String, String> words;

  private Legend(Map<String, String> words) {
    this.words = words;
  }

  static Legend of(Dictionary dictionary, Grid grid) {
    Map<String, String> words = new TreeMap<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        row.cells().forEach(cell -> read(dictionary, cell.text(), words));
      }
    }
    return new Legend(words);
  }

  private static void read(Dictionary dictionary, String text, Map<String, String> words) {
    if (text.indexOf('=') < 0 && text.indexOf(':') < 0) {
      return;
    }
    Matcher match = ENTRY.matcher(text);
    while (match.find()) {
      Meaning meaning = dictionary.read(match.group("text"), KINDS);
      boolean first =
          !meaning.phrases().isEmpty()
              && meaning.phrases().get(0).kind() == Kind.QUALIFIER
              && meaning.phrases().get(0).words().size() >= 2
              && meaning
                  .words()
                  .subList(0, meaning.phrases().get(0).words().size())
                  .equals(meaning.phrases().get(0).words());
      if (first) {
        words.putIfAbsent(key(match.group("sign")), meaning.phrases().get(0).meaning());
      }
    }
  }

  boolean isEmpty() {
    return words.isEmpty();
  }

  /** What the report says of a mark: nd, trace or absent; empty if it says nothing. */
  Optional<String> meaning(String mark) {
    return Optional.ofNullable(words.get(key(mark)));
  }

  private static String key(String mark) {
    return String.join(" ", Words.of(mark));
  }
}
