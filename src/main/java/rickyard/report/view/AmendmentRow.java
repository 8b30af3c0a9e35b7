package rickyard.report.view;

import java.util.List;

/**
 * A report whose figures counted and were replaced or taken away by one that is new this morning,
 * for one lot.
 *
 * @param lot lot or feed
 * @param batch of a feed; empty for a lot
 * @param line the sentence among the changes of the view that this one tells more of
 * @param why newer-revision, withdrawn or tests-disagree
 * @param old the figures that counted
 * @param now the figures of the report that took their place; empty where nothing did
 * @param from the report that counted
 * @param by the report that is new
 * @param cleared groups that the lot was said to clear for on the last morning and does not now
 * @param decisionRows rows of decisions.csv that rest on the old figures
 */
public record AmendmentRow(
    String lot,
    String batch,
    String line,
    String why,
    List<AnalysisRow> old,
    List<AnalysisRow> now,
    Source from,
    Source by,
    List<String> cleared,
    List<Integer> decisionRows) {
  public AmendmentRow {
    old = List.copyOf(old);
    now = List.copyOf(now);
    cleared = List.copyOf(cleared);
    decisionRows = List.copyOf(decisionRows);
  }

  /** A report: its number and revision, as far as it says them, and its file. */
  public record Source(String reportNo, int revision, String file) {}
}
