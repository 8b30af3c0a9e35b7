package rickyard.report.page;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
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
  public record Due(String due, boolean late, String about, String what, String why) {}

  /** How the sentence begins that every horse has on a first morning. */
  private static final String NO_EARLIER = "no earlier morning on record";

  private static final String FIRST_BEFORE =
      "'Before' is each ration with typical values, as if nothing had been analysed.";

  private Changes() {}

  /** What is compared with what; on a first morning there is no earlier one. */
  static String comparison(MorningView view) {
    if (view.firstMorning()) {
      boolean replaced = !view.amendments().isEmpty() || !view.changes().isEmpty();
      boolean moved = view.horses().stream().anyMatch(horse -> !ofHorse(view, horse).isEmpty());
      return "This is the first morning: there is no earlier one to compare with."
          + (moved ? " " + FIRST_BEFORE : "")
          + (replaced ? " Reports that were replaced within this inbox stand first." : "");
    }
    boolean nothing =
        view.changes().isEmpty()
            && view.recalls().isEmpty()
            && view.horses().stream().allMatch(horse -> horse.changes().isEmpty());
    return nothing ? "Nothing that was said before has changed." : "";
  }

  /** What 'before' is, said once at the head of the horses. */
  static String before(MorningView view) {
    return view.firstMorning() ? FIRST_BEFORE : "'Before' is the last finished morning's.";
  }

  /** What changed for a horse; what is said once for all of them is left out. */
  static List<String> ofHorse(MorningView view, HorseAdvice horse) {
    return horse.changes().stream()
        .filter(line -> !(view.firstMorning() && isAgainstTypical(line)))
        .toList();
  }

  /** On a first morning a verdict changed against typical values only, which tells nobody. */
  private static boolean isAgainstTypical(String line) {
    return line.startsWith(NO_EARLIER) || line.startsWith("verdict: ");
  }

  /** Why a horse stands where it does, without what is said once for all of them. */
  static String reason(MorningView view, HorseAdvice horse) {
    String reason = horse.reason();
    if (view.firstMorning()) {
      for (String line : horse.changes()) {
        reason = line.startsWith(NO_EARLIER) ? reason.replace("; why: " + line, "") : reason;
      }
    }
    return alone(view, horse) + reason;
  }

  /** A reason that is one of hay alone names the hay: the diet beside it may read otherwise. */
  private static String alone(MorningView view, HorseAdvice horse) {
    DietSummary diet = horse.after();
    if (diet == null || diet.limits().stream().anyMatch(line -> isIn(line.reason(), horse))) {
      return "";
    }
    Set<String> fed = diet.portions().stream().map(PortionLine::item).collect(Collectors.toSet());
    return view.lots().stream()
        .filter(lot -> fed.contains(lot.lot()))
        .filter(lot -> lot.verdicts().stream().anyMatch(row -> isIn(row.reason(), horse)))
        .findFirst()
        .map(lot -> Harmless.line(lot.lot()) + " alone: ")
        .orElse("");
  }

  private static boolean isIn(String reason, HorseAdvice horse) {
    return !reason.isBlank() && horse.reason().contains(reason);
  }

  /** The horses for which something changed, the most urgent first. */
  static Listed<OfHorse> ofHorses(MorningView view, Anchors anchors) {
    List<HorseAdvice> changed =
        view.horses().stream().filter(horse -> !ofHorse(view, horse).isEmpty()).toList();
    return Listed.first(
        changed,
        horse ->
            new OfHorse(
                anchors.horse(horse.horse()),
                Names.horse(view, horse.horse()),
                ofHorse(view, horse).stream()
                    .map(line -> Names.advisers(view, Plain.line(line)))
                    .toList()),
        "summary.json and, by its verdicts before and after, horses.csv");
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
                DueWords.about(view, row),
                DueWords.what(view, row),
                DueWords.why(view, row)),
        "follow-ups.csv");
  }
}
