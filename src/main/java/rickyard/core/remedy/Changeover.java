package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Cites;

/**
 * The day-by-day move from one ration to another: quarters over the configured days, the full share
 * from the day after; doses follow the share; no day falls below the forage floor.
 */
public final class Changeover {
  private static final double NOTHING_KG = 1e-9;

  private final ChangeoverRequest request;
  private final ScaleSteps steps;

  private Changeover(ChangeoverRequest request) {
    this.request = request;
    this.steps = request.settings().steps(request.units());
  }

  /**
   * Plans the days.
   *
   * <p>Where the old forage is gone there is nothing to mix: the proposal stands on day 1 and the
   * words say so. A forage that exceeds a starch-and-sugar limit is not phased out slowly either,
   * except for HYPP, which always phases in; both ask the vet.
   */
  public static ChangeoverPlan plan(ChangeoverRequest request) {
    return new Changeover(request).plan();
  }

  @Cites(source = "hay-change-texts", locator = "two weeks, a quarter more about every 4 days")
  private ChangeoverPlan plan() {
    int days = request.settings().changeoverDaysFor(request.conditions());
    List<String> words = new ArrayList<>();
    boolean changesForage = changesForage();
    boolean isHypp = request.conditions().contains("hypp");
    boolean isAtOnce = !changesForage || request.isOldGone() || (isTooSlowInSteps() && !isHypp);
    if (changesForage) {
      addWords(words, isHypp, days);
    }
    return new ChangeoverPlan(
        isAtOnce || days == 0 ? List.of(day(1, 1)) : stepwise(days), !isAtOnce && days > 0, words);
  }

  private void addWords(List<String> words, boolean isHypp, int days) {
    if (request.isOldGone()) {
      words.add(
          "No changeover is possible: the old forage is gone. Start the new one in several small"
              + " feedings a day and watch droppings, appetite and water; if some of the old"
              + " forage can still be had, mix it in.");
    }
    if (isHypp) {
      words.add(
          "HYPP: a sudden change of hay is itself a trigger. Phase in and ask the vet before day"
              + " 1.");
    } else if (isTooSlowInSteps() && !request.isOldGone()) {
      words.add(
          "Ask the vet first, today: the forage fed now exceeds the limit and is not phased out"
              + " slowly while cleared forage is at hand; a fast change under watch may be the"
              + " lesser risk. If the vet wants steps, quarters over "
              + days
              + " days are usual.");
    }
  }

  /** Forage that exceeds is not phased out over weeks while cleared forage is at hand. */
  private boolean isTooSlowInSteps() {
    return request.exceedsSugar() && request.isThenEnough();
  }

  private boolean changesForage() {
    return union().values().stream()
        .anyMatch(p -> p.item().isForage() && Math.abs(p.now() - p.then()) > NOTHING_KG);
  }

  private List<ChangeoverDay> stepwise(int days) {
    List<Double> shares = request.settings().changeoverShares();
    List<ChangeoverDay> plan = new ArrayList<>();
    for (int d = 1; d <= days; d++) {
      int step = (int) ((long) (d - 1) * shares.size() / days);
      plan.add(day(d, shares.get(step)));
    }
    plan.add(day(days + 1, 1));
    return plan;
  }

  /** An item with its amounts at both ends, kg as fed. */
  private record Pair(Serving like, double now, double then) {
    Candidate item() {
      return like.item();
    }

    double at(double share) {
      return now + share * (then - now);
    }
  }

  private SortedMap<String, Pair> union() {
    SortedMap<String, Pair> pairs = new TreeMap<>();
    for (Serving a : request.today()) {
      pairs.merge(key(a), new Pair(a, a.kg(), 0), Changeover::sum);
    }
    for (Serving a : request.then()) {
      pairs.merge(key(a), new Pair(a, 0, a.kg()), Changeover::sum);
    }
    return pairs;
  }

  private static String key(Serving a) {
    return a.item().key() + (a.fedAsForage() ? "\u0000forage" : "\u0000bucket");
  }

  private static Pair sum(Pair a, Pair b) {
    return new Pair(a.like(), a.now() + b.now(), a.then() + b.then());
  }

  private ChangeoverDay day(int day, double share) {
    List<Serving> amounts = new ArrayList<>();
    for (Pair p : union().values()) {
      boolean isChanged = Math.abs(p.now() - p.then()) > NOTHING_KG;
      double kg = isChanged && share < 1 ? steps.nearestKg(p.at(share)) : p.at(share);
      amounts.add(p.like().withKg(share < 1 ? kg : p.then()));
    }
    return new ChangeoverDay(day, share, share < 1 ? atLeastTheFloor(amounts) : amounts);
  }

  /** Adds steps of the new forage until the day reaches the floor. */
  private List<Serving> atLeastTheFloor(List<Serving> amounts) {
    List<Serving> day = new ArrayList<>(amounts);
    int place = largestNewForage(day);
    if (place < 0) {
      return day;
    }
    while (MixModel.forageDm(day) < request.forageFloorKgDm() - NOTHING_KG) {
      Serving a = day.get(place);
      day.set(place, a.withKg(steps.neighbourKg(a.kg(), 1)));
    }
    return day;
  }

  private int largestNewForage(List<Serving> day) {
    int place = -1;
    double most = 0;
    List<Pair> pairs = List.copyOf(union().values());
    for (int i = 0; i < day.size(); i++) {
      Pair p = pairs.get(i);
      if (p.item().isForage() && p.then() > most) {
        most = p.then();
        place = i;
      }
    }
    return place;
  }
}
