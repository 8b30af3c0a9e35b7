package rickyard.report.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.report.text.Plain;
import rickyard.report.text.Words;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.MorningView;

/** A follow-up for people: names in the place of the registers' keys, and nothing said twice. */
final class DueWords {
  /** Where a sentence lists horses by their keys. */
  private static final Pattern HORSES =
      Pattern.compile("(?<=fed to |left for )[^;,]+(?:, [^;,]+)*?(?=;|, enough|\\.?$)");

  private DueWords() {}

  static String about(MorningView view, FollowUpRow row) {
    return Names.horse(view, row.about());
  }

  /** What is to be done; what it is of comes first only where that is not said anyway. */
  static String what(MorningView view, FollowUpRow row) {
    String what = Plain.line(row.what());
    int colon = what.indexOf(": ");
    if (row.kind().equals("stock") && colon > 0) {
      return Names.client(view, what.substring(0, colon)) + what.substring(colon);
    }
    boolean isSaid =
        row.kind().equals("retest") || row.kind().equals("weight") || row.kind().equals("recheck");
    return isSaid ? what : Words.of("followup", row.kind()) + ": " + what;
  }

  static String why(MorningView view, FollowUpRow row) {
    return HORSES
        .matcher(Plain.line(row.why()))
        .replaceAll(m -> Matcher.quoteReplacement(horses(view, m.group())));
  }

  /** Names, where all are keys of horses; otherwise as it is. */
  private static String horses(MorningView view, String keys) {
    String[] each = keys.split(", ");
    for (int i = 0; i < each.length; i++) {
      if (!view.horseFacts().containsKey(each[i])) {
        return keys;
      }
      each[i] = Names.horse(view, each[i]);
    }
    return String.join(", ", each);
  }
}
