package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.WeightBy;

/** Body weights that every amount rests on and that are old, or were never taken. */
final class WeightsDue {
  private WeightsDue() {}

  static List<FollowUp> of(FollowUpContext context) {
    List<FollowUp> found = new ArrayList<>();
    for (Horse horse : context.horses().values()) {
      if (horse.weighedOn().isPresent()) {
        LocalDate day = horse.weighedOn().get();
        int holds = context.settings().weightDays(horse);
        LocalDate due = day.plusDays(holds);
        if (context.isNear(due)) {
          found.add(
              weight(
                  due,
                  horse,
                  "its weight is of " + day + " and counts as fresh for " + holds + " days"));
        }
      } else if (horse.weightBy() == WeightBy.GUESS) {
        found.add(weight(context.asOf(), horse, "its weight is guessed, no day of weighing known"));
      }
    }
    return found;
  }

  private static FollowUp weight(LocalDate due, Horse horse, String why) {
    return FollowUp.of(due, FollowUpKind.WEIGHT, horse.id(), "weigh it again", why);
  }
}
