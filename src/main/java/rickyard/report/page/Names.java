package rickyard.report.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.report.text.Harmless;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;

/** Horses and clients as people call them, with the register's key where the name is another. */
final class Names {
  private static final Pattern OVERRIDE = Pattern.compile("(?<=^override by )\\S+(?= on )");

  private Names() {}

  static String horse(MorningView view, String id) {
    HorseFacts facts = view.horseFacts().get(id);
    return named(facts == null ? "" : facts.name(), id);
  }

  static String client(MorningView view, String id) {
    ClientFacts facts = view.clientFacts().get(id);
    return named(facts == null ? "" : facts.name(), id);
  }

  /** A sentence in which the adviser who decided against a rule is named, not keyed. */
  static String advisers(MorningView view, String sentence) {
    return OVERRIDE
        .matcher(sentence)
        .replaceFirst(m -> Matcher.quoteReplacement(adviser(view, m.group())));
  }

  private static String adviser(MorningView view, String key) {
    return view.clientFacts().values().stream()
        .filter(facts -> facts.adviser().equals(key) && !facts.adviserName().isBlank())
        .map(facts -> Harmless.line(facts.adviserName()))
        .findFirst()
        .orElse(key);
  }

  private static String named(String name, String id) {
    String shown = Harmless.line(name);
    String key = Harmless.line(id);
    if (shown.isEmpty()) {
      return key;
    }
    return shown.equalsIgnoreCase(key) ? shown : shown + " (" + key + ")";
  }
}
