package rickyard.intake.interpret;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the report says an open name stands for, in a sentence of its own: 'Sugar: carbohydrates
 * soluble in water (WSC), fructan included'.
 */
final class Definitions {
  private static final int LONGEST_MARK = 3;
  private static final Pattern SAYS =
      Pattern.compile(
          "^(?<name>[^:=]{2,60}?)\\s*(?:[:=]|\\s(?:is|are|ist|sind|est|sont|es|son|zijn|means)\\s)\\s*(?<text>.+)$");
  private static final Set<Kind> KINDS =
      EnumSet.of(Kind.ANALYTE, Kind.NOT, Kind.HEDGE, Kind.EXCEPT, Kind.FILLER);

  private Definitions() {}

  /** The definitions in a line, as open code = code. */
  static Set<String> in(Dictionary dictionary, String line) {
    Set<String> found = new TreeSet<>();
    for (String sentence : Sentences.split(line)) {
      Matcher match = SAYS.matcher(sentence);
      if (match.find()) {
        open(dictionary, match.group("name"))
            .flatMap(rule -> meant(dictionary, rule, match.group("text")))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  /** The open name that a text consists of, perhaps behind a footnote mark. */
  private static Optional<AnalyteRule> open(Dictionary dictionary, String name) {
    int space = name.strip().indexOf(' ');
    String unmarked = space > 0 && space <= LONGEST_MARK ? name.strip().substring(space + 1) : name;
    return Label.read(dictionary, name)
        .or(() -> Label.read(dictionary, unmarked))
        .map(Label::rule)
        .filter(rule -> rule.use() == AnalyteRule.Use.OPEN);
  }

  private static Optional<String> meant(Dictionary dictionary, AnalyteRule rule, String text) {
    Meaning meaning = dictionary.read(text, KINDS);
    if (meaning.has(Kind.NOT) || meaning.has(Kind.HEDGE) || meaning.has(Kind.EXCEPT)) {
      return Optional.empty();
    }
    List<String> named =
        meaning.all(Kind.ANALYTE).stream().filter(rule.openFor()::contains).distinct().toList();
    return named.size() == 1
        ? Optional.of(rule.analyte().code().value() + "=" + named.get(0))
        : Optional.empty();
  }
}
