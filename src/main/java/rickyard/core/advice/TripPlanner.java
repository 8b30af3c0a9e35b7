package rickyard.core.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.core.nutrition.Horse;
import rickyard.core.quantity.Cites;
import rickyard.core.remedy.Candidate;
import rickyard.core.remedy.CandidateKind;
import rickyard.core.remedy.Changeover;
import rickyard.core.remedy.ChangeoverDay;
import rickyard.core.remedy.ChangeoverRequest;
import rickyard.core.remedy.Remedy;
import rickyard.core.remedy.RemedyRequest;
import rickyard.core.remedy.Serving;
import rickyard.core.remedy.TravelRation;

/**
 * Plans a trip: hay of a lot stays at home, hay found away is not analysed, so that forage from the
 * bag is raised in the usual steps before, fed away, and goes down in steps after. The days hang on
 * the first day of the trip only, so that every morning prints the same plan.
 */
final class TripPlanner {
  private final Horse horse;
  private final RemedyRequest request;
  private final double forageFloorKgDm;
  private final LocalDate asOf;
  private final int usualDays;
  private final List<String> words = new ArrayList<>();
  private final List<TripLine> lines = new ArrayList<>();

  /**
   * @param request what the search may know; its ration is the one at home
   */
  TripPlanner(Horse horse, RemedyRequest request, double forageFloorKgDm, LocalDate asOf) {
    this.horse = horse;
    this.request = request;
    this.forageFloorKgDm = forageFloorKgDm;
    this.asOf = asOf;
    this.usualDays = request.settings().changeoverDaysFor(horse.conditions());
  }

  /** The plan; empty where no trip is on record or it is over. */
  Optional<TripPlan> plan() {
    return horse.tripFrom().flatMap(from -> plan(from, horse.tripTo().orElse(from)));
  }

  private Optional<TripPlan> plan(LocalDate from, LocalDate to) {
    if (to.plusDays(usualDays).isBefore(asOf)) {
      return Optional.empty();
    }
    Optional<Remedy> away = TravelRation.of(request).filter(r -> eatsHay());
    if (away.isEmpty()) {
      words.add(
          eatsHay()
              ? "No forage from the bag is in reach that could be taken along."
              : "It eats no hay of a lot: take its own forage along.");
    } else if (!away.get().isEnough()) {
      words.add("No forage from the bag is enough away from home. " + away.get().why());
    } else {
      add(from, to, away.get().then());
    }
    lines.removeIf(line -> line.day().isBefore(asOf));
    return Optional.of(new TripPlan(from, to, lines, words));
  }

  private boolean eatsHay() {
    return request.ration().stream()
        .anyMatch(a -> a.fedAsForage() && a.item().kind() == CandidateKind.LOT && a.kg() > 0);
  }

  @Cites(source = "hay-change-texts", locator = "two weeks, a quarter more about every 4 days")
  private void add(LocalDate from, LocalDate to, List<Serving> away) {
    List<Serving> home = request.ration();
    LocalDate first = from.minusDays(usualDays);
    List<ChangeoverDay> up = Changeover.steps(changeover(home, away), usualDays);
    for (ChangeoverDay day : up) {
      LocalDate date = first.plusDays(day.day() - 1L);
      add(date, date.isBefore(from) ? TripLine.BEFORE : TripLine.AWAY, day.amounts());
    }
    List<Serving> full = up.get(up.size() - 1).amounts();
    from.plusDays(1).datesUntil(to.plusDays(1)).forEach(d -> add(d, TripLine.AWAY, full));
    if (request.check().check(home).isEnough()) {
      for (ChangeoverDay day : Changeover.steps(changeover(away, home), usualDays)) {
        add(to.plusDays(day.day()), TripLine.BACK, day.amounts());
      }
    } else {
      words.add("What it is fed at home does not clear: put that right before it goes back to it.");
    }
    if (asOf.isAfter(first) && asOf.isBefore(from)) {
      words.add(
          "The steps began on "
              + first
              + "; if they were not begun, only "
              + ChronoUnit.DAYS.between(asOf, from)
              + " days are left for them, "
              + usualDays
              + " are usual: ask the vet how fast.");
    }
    words.add(take(from, to, away));
  }

  private ChangeoverRequest changeover(List<Serving> now, List<Serving> then) {
    return new ChangeoverRequest(
        now,
        then,
        new TreeSet<>(horse.conditions()),
        forageFloorKgDm,
        false,
        true,
        false,
        request.units(),
        request.settings());
  }

  private void add(LocalDate date, String phase, List<Serving> amounts) {
    amounts.forEach(
        a ->
            lines.add(
                new TripLine(
                    date,
                    phase,
                    a.item().id(),
                    a.kg(),
                    a.item().batch(),
                    a.item().name(),
                    a.item().role())));
  }

  /** How much of the bagged forage goes along, and how much the whole plan takes. */
  private String take(LocalDate from, LocalDate to, List<Serving> away) {
    long days = ChronoUnit.DAYS.between(from, to) + 1;
    StringBuilder taken = new StringBuilder();
    for (Serving a : away) {
      if (a.fedAsForage() && a.item().kind() == CandidateKind.FEED) {
        double all =
            lines.stream()
                .filter(l -> l.item().equals(a.item().id()))
                .mapToDouble(TripLine::kg)
                .sum();
        taken
            .append(taken.isEmpty() ? "Take " : "; take ")
            .append(amount(a.item(), days * a.kg()))
            .append(" of ")
            .append(a.item().name())
            .append(" along for ")
            .append(days == 1 ? "1 day" : days + " days")
            .append(" away; the whole plan needs ")
            .append(amount(a.item(), all));
      }
    }
    return taken + ".";
  }

  private static String amount(Candidate item, double kg) {
    String text = String.format(Locale.ROOT, "%.1f kg", kg);
    return item.stock().unitKg().isEmpty()
        ? text
        : text
            + String.format(Locale.ROOT, " (%.1f bags)", kg / item.stock().unitKg().getAsDouble());
  }
}
