package rickyard.intake.interpret;

import java.util.HashSet;
import java.util.List;
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
 * Columns that carry a sign of the laboratory's own ('COL A', 'I', 'Column 2') and a key elsewhere,
 * perhaps on the last page, that says which basis each sign stands for.
 *
 * <p>It counts only where both bases are given a sign and no sign is given two: half a key may be a
 * sentence about something else.
 */
final class ColumnKey {
  private static final int MOST_WORDS = 3;
  private static final Pattern PARTS = Pattern.compile("[;,]\\s+|\\.\\s+|\\s\\|\\s");
  private static final Pattern ENTRY =
      Pattern.compile(
          "^(?:key|legend)?[:\\s]*(?<sign>[^:=]{1,24}?)\\s*(?:[:=]|\\s(?:is|means)\\s)\\s*(?<text>[^:=]{2,60})$",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern VERB =
      Pattern.compile("\\s(?:is|means)\\s", Pattern.CASE_INSENSITIVE);

  private final Map<String, String> texts;

  private ColumnKey(Map<String, String> texts) {
    this.texts = texts;
  }

  static ColumnKey of(Dictionary dictionary, Grid grid) {
    Map<String, String> texts = new TreeMap<>();
    Map<String, String> bases = new TreeMap<>();
    Set<String> torn = new HashSet<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        row.cells().stream()
            .filter(cell -> mayBeEntry(cell.text()))
            .flatMap(cell -> PARTS.splitAsStream(cell.text()))
            .map(part -> ENTRY.matcher(part.strip()))
            .filter(Matcher::find)
            .filter(entry -> isSign(dictionary, entry.group("sign")))
            .forEach(entry -> take(dictionary, entry, texts, bases, torn));
      }
    }
    torn.forEach(texts::remove);
    torn.forEach(bases::remove);
    return new ColumnKey(Set.copyOf(bases.values()).size() == 2 ? texts : Map.of());
  }

  /** Whether there is a sign or a word that stands in every entry: few cells have one. */
  private static boolean mayBeEntry(String text) {
    return text.indexOf(':') >= 0 || text.indexOf('=') >= 0 || VERB.matcher(text).find();
  }

  private static void take(
      Dictionary dictionary,
      Matcher entry,
      Map<String, String> texts,
      Map<String, String> bases,
      Set<String> torn) {
    Meaning meaning = dictionary.read(entry.group("text"), Dictionary.IN_MARK);
    Optional<String> basis = meaning.isWhole() ? meaning.basis() : Optional.empty();
    if (basis.isPresent()) {
      String sign = key(entry.group("sign"));
      if (!basis.get().equals(bases.getOrDefault(sign, basis.get()))) {
        torn.add(sign);
      }
      bases.put(sign, basis.get());
      texts.put(sign, entry.group("text"));
    }
  }

  /** A sign means nothing by itself. */
  private static boolean isSign(Dictionary dictionary, String sign) {
    List<String> words = Words.of(sign);
    return !words.isEmpty()
        && words.size() <= MOST_WORDS
        && Label.read(dictionary, sign).isEmpty()
        && dictionary.read(words, Dictionary.IN_HEADING).phrases().stream()
            .allMatch(p -> p.kind() == Kind.FILLER);
  }

  boolean isEmpty() {
    return texts.isEmpty();
  }

  /** What a heading says in the words of the key; the heading itself if it is no sign. */
  String said(String heading) {
    return texts.isEmpty() ? heading : texts.getOrDefault(key(heading), heading);
  }

  private static String key(String text) {
    return String.join(" ", Words.of(text));
  }
}
