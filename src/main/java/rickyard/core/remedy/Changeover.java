package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rickyard.core.quantity.Cites;

/**
 * The day-by-day move from one ration to another: quarters over the configured days, the full share
 * from the day after; doses follow the share; no day falls below the forage floor.
 */
public final class Changeover {
  private static final double NOTHING_KG = 1e-9;

  private final ChangeoverRequest request;
  private final ScaleSteps steps;
  private final OldForage old;
  private int firstDayWithoutOld = Integer.MAX_VALUE;

  private Changeover(ChangeoverRequest request) {
    this.request = request;
    this.steps = request.settings().steps(request.units());
    this.old = new OldForage(steps);
  }

  /**
   * Plans the days.
   *
   * <p>Where the old forage is gone there is nothing to mix: the proposal stands on day 1 and the
   * words say so; where it runs out on the way, the new forage takes its place from that day on. A
   * forage that exceeds a starch-and-sugar limit is not phased out slowly either, except for HYPP,
   * which always phases in; both ask the vet.
   */
  public static ChangeoverPlan plan(ChangeoverRequest request) {
    return new Changeover(request).plan();
  }

  /**
   * The steps alone, over a number of days that is given, the proposal on the day after.
   *
   * @param days of the steps, at least 0
   */
  public static List<ChangeoverDay> steps(ChangeoverRequest request, int days) {
    return new Changeover(request).stepwise(days);
  }

  @Cites(source = "hay-change-texts", locator = "two weeks, a quarter more about every 4 days")
  private ChangeoverPlan plan() {
    int days = request.settings().changeoverDaysFor(request.conditions());
    boolean changesForage = changesForage();
    boolean isHypp = request.conditions().contains("hypp");
    boolean isAtOnce = !changesForage || isOldGone() || (isTooSlowInSteps() && !isHypp);
    List<ChangeoverDay> plan = isAtOnce || days == 0 ? List.of(day(1, 1)) : stepwise(days);
    List<String> words = new ArrayList<>();
    if (changesForage) {
      addWords(words, isHypp, days);
    }
    return new ChangeoverPlan(plan, plan.size() > 1, words);
  }

  /** Whether none of the forage that is to become less is there any more. */
  private boolean isOldGone() {
    List<Candidate> outgoing =
        union().values().stream().filter(Pair::isOutgoingForage).map(Pair::item).toList();
    return request.isOldGone()
        || (!outgoing.isEmpty() && outgoing.stream().allMatch(OldForage::isGone));
  }

  private void addWords(List<String> words, boolean isHypp, int days) {
    if (isOldGone()) {
      words.add(
          "No changeover is possible: the old forage is gone. Start the new one in several small"
              + " feedings a day and watch droppings, appetite and water; if some of the old"
              + " forage can still be had, mix it in.");
    }
    if (isHypp) {
      words.add(
          "HYPP: a sudden change of hay is itself a trigger. Phase in and ask the vet before day"
              + " 1.");
    } else if (isTooSlowInSteps() && !isOldGone()) {
      words.add(
          "Ask the vet first, today: the forage fed now exceeds the limit and is not phased out"
              + " slowly while cleared forage is at hand; a fast change under watch may be the"
              + " lesser risk. If the vet wants steps, quarters over "
              + days
              + " days are usual.");
    }
    if (firstDayWithoutOld < Integer.MAX_VALUE) {
      words.add(
          "The present forage does not last for all steps: from day "
              + firstDayWithoutOld
              + " the new one takes its place sooner. Get more of it for slower steps, or watch"
              + " droppings, appetite and water.");
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

    boolean isOutgoingForage() {
      return item().isForage() && then < now - NOTHING_KG;
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
    double missingDmKg = 0;
    for (Pair p : union().values()) {
      double kg = kg(p, share);
      double there = p.isOutgoingForage() && kg > 0 ? old.take(p.item(), kg) : kg;
      if (there < kg - NOTHING_KG) {
        missingDmKg += p.like().withKg(kg - there).dmKg();
        firstDayWithoutOld = Math.min(firstDayWithoutOld, day);
      }
      amounts.add(p.like().withKg(there));
    }
    double least =
        share < 1 || missingDmKg > 0
            ? Math.max(
                missingDmKg > 0 ? MixModel.forageDm(amounts) + missingDmKg : 0,
                request.forageFloorKgDm())
            : 0;
    return new ChangeoverDay(day, share, withForageOf(least, amounts));
  }

  private double kg(Pair p, double share) {
    if (share >= 1) {
      return p.then();
    }
    boolean isChanged = Math.abs(p.now() - p.then()) > NOTHING_KG;
    return isChanged ? steps.nearestKg(p.at(share)) : p.at(share);
  }

  /** Adds steps of the new forage until the day has so much dry matter of forage. */
  private List<Serving> withForageOf(double leastDmKg, List<Serving> amounts) {
    List<Serving> day = new ArrayList<>(amounts);
    int place = largestNewForage(day);
    while (place >= 0 && MixModel.forageDm(day) < leastDmKg - NOTHING_KG) {
      Serving a = day.get(place);
      day.set(place, a.withKg(steps.neighbourKg(a.kg(), 1)));
    }
    return day;
  }

  /** The forage that grows most; where none grows, the largest of the proposal; -1 for none. */
  private int largestNewForage(List<Serving> day) {
    List<Pair> pairs = List.copyOf(union().values());
    return IntStream.range(0, day.size())
        .filter(i -> pairs.get(i).item().isForage() && pairs.get(i).then() > 0)
        .boxed()
        .max(
            Comparator.<Integer, Boolean>comparing(i -> !pairs.get(i).isOutgoingForage())
                .thenComparingDouble(i -> pairs.get(i).then())
                .thenComparing(Comparator.reverseOrder()))
        .orElse(-1);
  }
}
