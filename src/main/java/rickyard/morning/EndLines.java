package rickyard.morning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rickyard.core.advice.Priority;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;

/** The last lines of a run: counts that add up, and where to look. */
final class EndLines {
  private EndLines() {}

  static List<String> of(MorningView view, Path out) {
    Counts c = view.counts();
    List<String> lines = new ArrayList<>();
    lines.add(
        "publish  "
            + Words.count(calls(view, Priority.CALL_NOW), "call")
            + " now, "
            + calls(view, Priority.CALL_TODAY)
            + " today, "
            + Words.count(view.questions().size(), "question")
            + " open");
    lines.add(
        Words.count(c.files(), "file")
            + " = "
            + c.accepted()
            + " accepted + "
            + c.question()
            + " to be asked + "
            + c.duplicate()
            + " duplicate + "
            + c.superseded()
            + " superseded + "
            + c.refused()
            + " refused + "
            + c.known()
            + " known; "
            + Words.count(c.samples(), "sample")
            + ", "
            + Words.count(c.lots(), "lot")
            + ", "
            + Words.count(c.horses(), "horse"));
    lines.add("Summary: " + out.resolve("summary.html"));
    return lines;
  }

  private static int calls(MorningView view, Priority priority) {
    return (int) view.horses().stream().filter(h -> h.priority() == priority).count();
  }
}
