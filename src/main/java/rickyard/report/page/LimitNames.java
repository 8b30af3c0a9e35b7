package rickyard.report.page;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.MorningView;
import rickyard.report.view.VerdictRow;

/** Rows of the table of limits, which sentences name by their keys, as people say them. */
final class LimitNames {
  private static final Pattern KEY = Pattern.compile("(?<=: )[A-Za-z0-9_-]+(?= )");

  private final Map<String, String> names = new TreeMap<>();

  LimitNames(MorningView view) {
    view.lots().stream()
        .flatMap(lot -> lot.verdicts().stream())
        .forEach(row -> names.putIfAbsent(row.limitId(), words(row)));
  }

  static String words(VerdictRow row) {
    return Words.of("quantity", row.quantity())
        + ", "
        + Words.of("group", row.group())
        + ", limit "
        + Shown.number(Double.valueOf(row.limit()))
        + " "
        + Words.of("unit", row.unit());
  }

  /** A sentence with the words of the limit that it names after its colon. */
  String inWords(String sentence) {
    return KEY.matcher(sentence)
        .replaceFirst(m -> Matcher.quoteReplacement(names.getOrDefault(m.group(), m.group())));
  }
}
