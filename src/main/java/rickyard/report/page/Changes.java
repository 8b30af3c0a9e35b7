package rickyard.report.page;

import java.util.List;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Words;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.MorningView;

/** What changed since the last morning, who must hear of it, and what is due. */
public final class Changes {
  /** What changed for a horse. */
  public record OfHorse(String anchor, String horse, List<String> changes) {}

  /** Somebody who got a lot whose verdict fell. */
  public record Recall(
      String lot, String client, String horse, String delivered, String told, String what) {}

  /** Something due. */
  public record Due(String due, boolean late, String kind, String about, String what, String why) {}

  private Changes() {}

  static List<OfHorse> ofHorses(MorningView view, Anchors anchors) {
    return view.horses().stream()
        .filter(horse -> !horse.changes().isEmpty())
        .map(
            horse ->
                new OfHorse(
                    anchors.horse(horse.horse()),
                    Names.horse(view, horse.horse()),
                    horse.changes().stream().map(Plain::line).toList()))
        .toList();
  }

  static List<Recall> recalls(MorningView view) {
    return view.recalls().stream()
        .map(
            row ->
                new Recall(
                    Harmless.line(row.lot()),
                    Names.client(view, row.client()),
                    row.horse().isBlank() ? "" : Names.horse(view, row.horse()),
                    Harmless.line(row.deliveredOn()),
                    row.toldOn().isBlank() ? "not told" : Harmless.line(row.toldOn()),
                    Plain.line(row.what())))
        .toList();
  }

  /** What is due; open questions stand in their own section. */
  static Listed<Due> due(MorningView view) {
    String today = view.asOf().toString();
    List<FollowUpRow> due =
        view.followUps().stream().filter(row -> !row.kind().equals("question")).toList();
    return Listed.first(
        due,
        row ->
            new Due(
                Harmless.line(row.due()),
                !row.due().isBlank() && row.due().compareTo(today) < 0,
                Words.of("followup", row.kind()),
                Harmless.line(row.about()),
                Plain.line(row.what()),
                Plain.line(row.why())),
        "follow-ups.csv");
  }
}
