package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.core.forage.Decision;
import rickyard.core.nutrition.Horse;

/** Horses whose client was told and that still stand as told, and remedies that have begun. */
final class RechecksDue {
  private RechecksDue() {}

  static List<FollowUp> of(FollowUpContext context) {
    List<FollowUp> found = new ArrayList<>();
    for (HorseAdvice advice : context.advice()) {
      if (advice.priority() == Priority.STANDING) {
        newest(context, advice.horse(), "told").ifPresent(d -> told(context, d, found));
      }
      newest(context, advice.horse(), "accepted").ifPresent(d -> begun(context, d, found));
    }
    return found;
  }

  private static Optional<Decision> newest(FollowUpContext context, String horse, String kind) {
    return context.decisions().stream()
        .filter(d -> d.kind().equals(kind) && d.about().equals(horse))
        .filter(d -> !d.date().isAfter(context.asOf()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row));
  }

  private static void told(FollowUpContext context, Decision told, List<FollowUp> found) {
    LocalDate due = told.date().plusDays(context.settings().recheckDays());
    if (context.isNear(due)) {
      found.add(
          FollowUp.of(
              due,
              FollowUpKind.RECHECK,
              told.about(),
              "ask the client how it stands",
              "told " + words(told) + "on " + told.date() + " and unchanged since"));
    }
  }

  private static String words(Decision told) {
    return told.value().isBlank() ? "" : "'" + told.value().strip() + "' ";
  }

  /** Due once; whatever is decided about the horse from that day on puts an end to it. */
  private static void begun(FollowUpContext context, Decision accepted, List<FollowUp> found) {
    Optional<Horse> horse = context.findHorse(accepted.about());
    if (horse.isEmpty()) {
      return;
    }
    LocalDate start = accepted.startOn().orElse(accepted.date());
    int days = context.remedy().changeoverDaysFor(horse.get().conditions());
    LocalDate due = start.plusDays(days).plusDays(context.settings().recheckDays());
    boolean isDone =
        context.decisions().stream()
            .anyMatch(
                d ->
                    d.about().equals(accepted.about())
                        && !d.date().isBefore(due)
                        && !d.date().isAfter(context.asOf()));
    if (!isDone && context.isNear(due)) {
      found.add(
          FollowUp.of(
              due,
              FollowUpKind.RECHECK,
              accepted.about(),
              "look at the changed ration again",
              accepted.value().strip()
                  + " accepted, begun on "
                  + start
                  + ", "
                  + days
                  + " days of changeover"));
    }
  }
}
