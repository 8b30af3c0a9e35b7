package rickyard.report;

import java.util.List;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.report.view.MorningView;

/**
 * Keeps amounts out of every output for a horse that a veterinarian must see first: its proposals
 * keep their rank and kind, nothing that could be weighed out.
 */
final class VetFirst {
  private VetFirst() {}

  static MorningView withheld(MorningView view) {
    if (view.horses().stream().noneMatch(HorseAdvice::vetFirst)) {
      return view;
    }
    return view.withHorses(view.horses().stream().map(VetFirst::withheld).toList());
  }

  private static HorseAdvice withheld(HorseAdvice horse) {
    if (!horse.vetFirst()) {
      return horse;
    }
    return new HorseAdvice(
        horse.horse(),
        horse.client(),
        horse.groups(),
        horse.priority(),
        horse.reason(),
        horse.say(),
        horse.before(),
        horse.after(),
        horse.changes(),
        horse.problems(),
        horse.proposals().stream().map(VetFirst::withheld).toList(),
        List.of(),
        true,
        horse.affected(),
        horse.questions(),
        null);
  }

  private static Proposal withheld(Proposal proposal) {
    return new Proposal(
        proposal.rank(), proposal.kind(), proposal.enough(), Cautions.VET_FIRST, List.of(), null);
  }
}
