package rickyard.core.advice;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import rickyard.core.nutrition.Portion;

/** What can be done for a horse: proposals, the day of a change that was accepted, a trip. */
final class Counsel {
  private final AdviceContext context;
  private final Herds herds;
  private final Reach reach;

  Counsel(AdviceContext context, Herds herds) {
    this.context = context;
    this.herds = herds;
    this.reach =
        new Reach(
            context.larder(),
            new HayStocks(context.deliveries(), context.use(), context.asOf()),
            context.limits(),
            context.asOf());
  }

  /**
   * Proposals where a limit that asks for a change is not cleared. A ration of its own helps no
   * horse that eats of a bale which does not clear.
   */
  RemedyFinder.Found remedies(
      SeenHorse seen,
      List<Portion> now,
      List<Portion> then,
      DietSummary after,
      List<LimitLine> lotLimits) {
    Optional<Herd> herd = seen.herd().filter(Herd::isBaleInTheWay);
    if (herd.isPresent()) {
      var inReach = new TreeSet<>(reach.of(seen.horse()).keySet());
      return new RemedyFinder.Found(
          List.of(herd.get().proposal(herds.otherBales(herd.get(), inReach))), List.of());
    }
    return needsRemedy(after, lotLimits) ? finder(seen, now, then).find() : RemedyFinder.Found.NONE;
  }

  private static boolean needsRemedy(DietSummary after, List<LimitLine> lotLimits) {
    return Stream.concat(after.limits().stream(), lotLimits.stream())
        .filter(l -> l.severity().equals("stop") || l.severity().equals("change"))
        .anyMatch(l -> !l.verdict().equals("clears") && !l.verdict().equals("no-limit"));
  }

  /** What is fed on the day of the changeover to an accepted remedy. */
  List<Portion> onDay(
      Acceptance accepted, SeenHorse seen, List<Portion> now, List<Portion> coming) {
    List<Portion> goal = accepted.applied(coming, context.larder());
    return finder(seen, now, goal).onDay(accepted.day());
  }

  /** The plan of a trip on record. */
  Optional<TripPlan> trip(SeenHorse seen, List<Portion> now, List<Portion> then) {
    return seen.horse().tripFrom().isEmpty() ? Optional.empty() : finder(seen, now, then).trip();
  }

  private RemedyFinder finder(SeenHorse seen, List<Portion> now, List<Portion> then) {
    return new RemedyFinder(
        seen.horse(), seen.groups(), context, seen.requirements(), now, then, reach);
  }
}
