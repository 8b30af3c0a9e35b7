package rickyard.report.page;

import rickyard.report.text.Plain;
import rickyard.report.view.VerdictRow;

/** Why a verdict reads as it does, with what would settle it said once. */
final class Reasons {
  private static final String GIVES_IT = "a report that gives it";
  private static final String SETTLES = "would settle it";

  private Reasons() {}

  static String of(VerdictRow row) {
    String words = Plain.sentence(row.reason());
    String tail = "; " + GIVES_IT + ".";
    if (!words.endsWith(tail)) {
      return words;
    }
    String start = words.substring(0, words.length() - tail.length());
    return start + (start.contains(SETTLES) ? "." : "; " + GIVES_IT + " " + SETTLES + ".");
  }
}
