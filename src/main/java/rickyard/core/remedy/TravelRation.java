package rickyard.core.remedy;

import java.util.Comparator;
import java.util.Optional;

/** The ration for a journey: all hay as forage from the bag, which can be taken along. */
public final class TravelRation {
  private TravelRation() {}

  /**
   * The best such ration: one that is enough before one that is not, then what the horse can chew,
   * then the least change.
   *
   * @return empty where no bagged forage is in reach or none takes the place of anything
   */
  public static Optional<Remedy> of(RemedyRequest request) {
    ForageProposals forage = new ForageProposals(request, false);
    Completion completion = new Completion(request);
    return forage.controlled().stream()
        .flatMap(
            c ->
                forage.share(c, 1).map(completion::of).stream()
                    .map(d -> new Choice(request.canChew(c), c, d)))
        .min(
            Comparator.<Choice, Boolean>comparing(c -> !c.isChewable())
                .thenComparing(Choice::draft, Draft.BEST_FIRST)
                .thenComparing(Choice::item, Candidate.BY_KEY))
        .map(c -> remedy(request, c));
  }

  private record Choice(boolean isChewable, Candidate item, Draft draft) {}

  private static Remedy remedy(RemedyRequest request, Choice choice) {
    Draft draft = choice.draft();
    return new Remedy(
        RemedyKind.CONTROLLED,
        RemedyItems.of(request.ration(), draft.ration(), request.settings()),
        draft.ration(),
        draft.diet().isEnough(),
        Reasons.givenShare(request, draft, choice.item(), 1),
        Optional.of(draft.diet()),
        request.changeDmKg(draft.ration()));
  }
}
