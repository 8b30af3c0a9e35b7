package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.Horse;
import rickyard.registers.Office;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.QuestionRow;

/** What falls due: old weights, shelf lives, trips, open questions. */
final class FollowUps {
  private static final int OLD_WEIGHT_DAYS = 180;
  private static final int SHELF_WARNING_DAYS = 30;

  private final LocalDate asOf;
  private final Office office;
  private final List<HorseAdvice> advice;
  private final List<FollowUpRow> rows = new ArrayList<>();

  FollowUps(Inputs inputs, List<HorseAdvice> advice) {
    this.asOf = inputs.asOf();
    this.office = inputs.registers().office();
    this.advice = List.copyOf(advice);
  }

  /** The rows by day, kind and what they are about. */
  List<FollowUpRow> rows(List<QuestionRow> questions) {
    rows.clear();
    office.horses().values().forEach(this::addWeight);
    office.feeds().forEach(this::addShelfLife);
    advice.stream().filter(h -> !h.vetFirst()).forEach(this::addTrip);
    questions.forEach(
        q ->
            rows.add(
                new FollowUpRow(asOf.toString(), "question", q.about(), q.question(), q.why())));
    rows.sort(
        Comparator.comparing(FollowUpRow::due)
            .thenComparing(FollowUpRow::kind)
            .thenComparing(FollowUpRow::about)
            .thenComparing(FollowUpRow::what));
    return List.copyOf(rows);
  }

  private void addWeight(Horse horse) {
    horse
        .weighedOn()
        .filter(day -> day.plusDays(OLD_WEIGHT_DAYS).isBefore(asOf))
        .ifPresent(
            day ->
                rows.add(
                    new FollowUpRow(
                        asOf.toString(),
                        "weight",
                        horse.id(),
                        "weigh it again",
                        "its weight is of " + day)));
  }

  private void addShelfLife(Feed feed) {
    if (feed.baggedOn().isEmpty() || feed.shelfLifeMonths().isEmpty()) {
      return;
    }
    LocalDate end = feed.baggedOn().get().plusMonths(feed.shelfLifeMonths().getAsInt());
    if (!end.isAfter(asOf.plusDays(SHELF_WARNING_DAYS))) {
      rows.add(
          new FollowUpRow(
              end.toString(),
              "shelf-life",
              feed.batch().isEmpty() ? feed.id() : feed.id() + " " + feed.batch(),
              "use up or throw away",
              "bagged on "
                  + feed.baggedOn().get()
                  + ", keeps "
                  + feed.shelfLifeMonths().getAsInt()
                  + " months"));
    }
  }

  /** The first day on which something changes because of a trip; today where no plan was made. */
  private void addTrip(HorseAdvice horse) {
    @Nullable TripPlan trip = horse.trip();
    if (trip == null || trip.to().isBefore(asOf)) {
      return;
    }
    LocalDate due = trip.lines().stream().map(TripLine::day).findFirst().orElse(asOf);
    rows.add(
        new FollowUpRow(
            due.toString(),
            "trip",
            horse.horse(),
            trip.lines().isEmpty() ? "decide what it is fed away" : "follow the plan of trips.csv",
            "away from "
                + trip.from()
                + " to "
                + trip.to()
                + ": "
                + String.join(" ", trip.words())));
  }
}
