package rickyard.core.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationAmounts;
import rickyard.core.nutrition.Rations;
import rickyard.core.nutrition.Replacement;

/** What a horse is fed: the ration in force, weighed, and as deliveries will change it. */
final class Feeding {
  private static final int SOON_DAYS = 2;

  private final AdviceContext context;

  Feeding(AdviceContext context) {
    this.context = context;
  }

  Optional<Ration> inForce(Horse horse) {
    return Rations.inForce(
        context.rations().stream().filter(r -> r.horseId().equals(horse.id())).toList(),
        context.asOf());
  }

  /** The ration in kg; what keeps it from being known is added to {@code problems}. */
  List<Portion> weigh(Horse horse, Optional<Ration> ration, List<String> problems) {
    if (ration.isEmpty()) {
      problems.add("no ration is on record for it on " + context.asOf());
      return List.of();
    }
    RationAmounts amounts = amounts(horse, ration.get(), context.larder());
    amounts.problems().forEach(p -> problems.add(p.words()));
    return amounts.portions();
  }

  RationAmounts amounts(Horse horse, Ration ration, Larder larder) {
    return RationAmounts.of(
        horse, ration, larder::find, context.measures(), context.asOf(), context.standards());
  }

  ComingRation coming(Horse horse, List<Portion> now, List<String> problems) {
    ComingRation coming =
        ComingRation.of(
            horse.clientId(),
            now,
            context.deliveries(),
            lot -> context.larder().find(lot, ""),
            context.asOf(),
            context.standards());
    coming.withoutValue().forEach(lot -> problems.add("nobody knows the dry matter of lot " + lot));
    return coming;
  }

  Acceptance.Found accepted(Horse horse, Optional<Ration> ration) {
    return ration
        .map(
            r ->
                Acceptance.find(
                    horse.id(), context.decisions(), r, context.larder(), context.asOf()))
        .orElse(Acceptance.Found.NONE);
  }

  /** Whether what is judged is fed now, or the lots that are new in it open within two days. */
  boolean isFedSoon(ComingRation coming) {
    LocalDate soon = context.asOf().plusDays(SOON_DAYS);
    return !coming.isChanged()
        || coming.replacements().stream()
            .map(Replacement::delivery)
            .anyMatch(
                d ->
                    d.openedOn().isPresent()
                        || d.opensOn().isEmpty()
                        || !d.opensOn().get().isAfter(soon));
  }
}
