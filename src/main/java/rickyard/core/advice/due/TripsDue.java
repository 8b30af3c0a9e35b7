package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;

/** Horses that travel: the first day on which something changes for it, today where no plan was. */
final class TripsDue {
  private TripsDue() {}

  static List<FollowUp> of(FollowUpContext context) {
    return context.advice().stream()
        .filter(horse -> !horse.vetFirst())
        .map(horse -> of(horse, context.asOf()))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<FollowUp> of(HorseAdvice horse, LocalDate asOf) {
    @Nullable TripPlan trip = horse.trip();
    if (trip == null || trip.to().isBefore(asOf)) {
      return Optional.empty();
    }
    LocalDate due = trip.lines().stream().map(TripLine::day).findFirst().orElse(asOf);
    return Optional.of(
        FollowUp.of(
            due,
            FollowUpKind.TRIP,
            horse.horse(),
            trip.lines().isEmpty() ? "decide what it is fed away" : "follow the plan for it",
            "away from "
                + trip.from()
                + " to "
                + trip.to()
                + ": "
                + String.join(" ", trip.words())));
  }
}
