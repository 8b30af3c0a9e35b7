package rickyard.report;

import java.util.List;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;

/** Mornings and advice like others but for one thing. */
final class Altered {
  private Altered() {}

  static MorningView units(MorningView view, String units) {
    return morning(view, units, view.counts(), view.firstMorning());
  }

  static MorningView counts(MorningView view, Counts counts) {
    return morning(view, view.units(), counts, view.firstMorning());
  }

  static MorningView first(MorningView view) {
    return morning(view, view.units(), view.counts(), true);
  }

  private static MorningView morning(
      MorningView view, String units, Counts counts, boolean firstMorning) {
    return new MorningView(
        view.asOf(),
        units,
        view.outcomes(),
        view.analyses(),
        view.lots(),
        view.horses(),
        view.questions(),
        view.followUps(),
        view.recalls(),
        view.changes(),
        view.problems(),
        view.warnings(),
        view.decisionRule(),
        view.tables(),
        view.horseFacts(),
        view.clientFacts(),
        counts,
        firstMorning,
        view.season(),
        view.lotCautions(),
        view.amendments(),
        view.papers());
  }

  static HorseAdvice proposals(HorseAdvice h, List<Proposal> proposals) {
    return advice(h, h.reason(), h.changes(), proposals);
  }

  static HorseAdvice changes(HorseAdvice h, String reason, List<String> changes) {
    return advice(h, reason, changes, h.proposals());
  }

  private static HorseAdvice advice(
      HorseAdvice h, String reason, List<String> changes, List<Proposal> proposals) {
    return new HorseAdvice(
        h.horse(),
        h.client(),
        h.groups(),
        h.priority(),
        reason,
        h.say(),
        h.before(),
        h.after(),
        changes,
        h.problems(),
        proposals,
        h.changeovers(),
        h.vetFirst(),
        h.affected(),
        h.questions(),
        h.trip());
  }
}
