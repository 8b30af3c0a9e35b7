package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The questions about layouts, in words. */
final class LayoutQuestion {
  private LayoutQuestion() {}

  /** One question for all reports that changed in the same way. */
  static Question changed(Report report, Layout known, List<String> changes) {
    List<String> key = new ArrayList<>(List.of("layout-changed", report.layout().id()));
    key.addAll(changes);
    return question(
        QuestionId.of(key.toArray(String[]::new)),
        "layout-changed",
        report,
        "The layout of "
            + report.lab()
            + " is not the one that was read before: "
            + String.join("; ", changes)
            + ". Are the figures right as read?",
        List.of("as read", "leave out"),
        "Remembered is layout "
            + known.id()
            + "; the answer holds for all reports that changed so.");
  }

  /** One question for all reports that follow the same corrections. */
  static Question misread(Report report, List<String> misread) {
    List<String> key = new ArrayList<>(List.of("layout-misread", report.layout().id()));
    key.addAll(misread);
    return question(
        QuestionId.of(key.toArray(String[]::new)),
        "layout-misread",
        report,
        "This layout was misread before ("
            + String.join("; ", misread)
            + "): are the figures of its reports that came since right as read?",
        List.of("as read"),
        "Layout "
            + report.layout().name()
            + ". A figure that is not right is corrected in decisions.csv.");
  }

  private static Question question(
      String id, String kind, Report report, String words, List<String> choices, String why) {
    return new Question(
        id, kind, report.document(), Optional.empty(), "report", words, choices, "", why);
  }
}
