package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import rickyard.core.nutrition.Feed;

/** Bagged feeds that come to the end of their shelf life. */
final class ShelfLivesDue {
  private ShelfLivesDue() {}

  static List<FollowUp> of(FollowUpContext context, Fed fed) {
    List<FollowUp> found = new ArrayList<>();
    for (Feed feed : context.feeds()) {
      if (feed.baggedOn().isPresent() && feed.shelfLifeMonths().isPresent()) {
        int months = feed.shelfLifeMonths().getAsInt();
        LocalDate end = feed.baggedOn().get().plusMonths(months);
        if (context.isNear(end)) {
          found.add(
              FollowUp.of(
                  end,
                  FollowUpKind.SHELF_LIFE,
                  feed.batch().isEmpty() ? feed.id() : feed.id() + " " + feed.batch(),
                  "use up or throw away",
                  "bagged on "
                      + feed.baggedOn().get()
                      + ", keeps "
                      + months
                      + (months == 1 ? " month" : " months")
                      + eaters(fed, feed)));
        }
      }
    }
    return found;
  }

  private static String eaters(Fed fed, Feed feed) {
    List<Fed.Meal> meals =
        fed.of(feed.id()).stream().filter(m -> m.batch().equals(feed.batch())).toList();
    return meals.isEmpty() ? "" : "; fed to " + Fed.names(meals);
  }
}
