package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.WorstVerdict;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;
import rickyard.core.remedy.Changeover;
import rickyard.core.remedy.ChangeoverDay;
import rickyard.core.remedy.ChangeoverPlan;
import rickyard.core.remedy.ChangeoverRequest;
import rickyard.core.remedy.CheckedDiet;
import rickyard.core.remedy.CheckedLimit;
import rickyard.core.remedy.HorseFacts;
import rickyard.core.remedy.IntakeRange;
import rickyard.core.remedy.Remedy;
import rickyard.core.remedy.RemedyRequest;
import rickyard.core.remedy.RemedySearch;
import rickyard.core.remedy.Serving;

/**
 * Finds proposals for one horse: hands the search what it may know, and checks every proposal with
 * the same diet code and the same limits as the morning's own diets. Used once.
 */
final class RemedyFinder {
  private final Horse horse;
  private final HorseGroups groups;
  private final AdviceContext context;
  private final DietJudge judge;
  private final Requirements requirements;
  private final SearchBounds bounds;
  private final Manger manger;
  private final List<Portion> now;
  private final List<Portion> then;
  private final LotHazards hazards;
  private final IntakeRange intake;
  private final Set<String> shortWithoutChange;

  RemedyFinder(
      Horse horse,
      HorseGroups groups,
      AdviceContext context,
      Requirements requirements,
      List<Portion> now,
      List<Portion> then,
      Reach reach) {
    this.horse = horse;
    this.groups = groups;
    this.context = context;
    this.judge = new DietJudge(context.limits(), context.whyNotJudged());
    this.requirements = requirements;
    this.bounds = new SearchBounds(horse, context.standards());
    this.manger = new Manger(horse, now, then, reach);
    this.now = now;
    this.then = then;
    this.hazards = new LotHazards(context.lotVerdicts(), context.limits(), groups);
    Diet coming = diet(then);
    this.intake = bounds.intake(then, coming, diet(now));
    this.shortWithoutChange = Obstacles.shortfalls(coming).keySet();
  }

  /** Proposals and the days of their changeovers. */
  record Found(List<Proposal> proposals, List<ChangeoverLine> days) {
    static final Found NONE = new Found(List.of(), List.of());

    Found {
      proposals = List.copyOf(proposals);
      days = List.copyOf(days);
    }
  }

  Found find() {
    List<Proposal> proposals = new ArrayList<>();
    List<ChangeoverLine> days = new ArrayList<>();
    for (Remedy remedy : RemedySearch.search(request())) {
      int rank = proposals.size() + 1;
      ChangeoverPlan plan =
          remedy.then().isEmpty()
              ? ChangeoverPlan.NONE
              : plan(manger.servingsAtHand(now), remedy.then(), remedy.isEnough());
      proposals.add(
          ProposalLines.of(
              rank, remedy, newlyShort(remedy), plan, uncleared(remedy, plan), summary(remedy)));
      days.addAll(ProposalLines.days(rank, plan));
    }
    return new Found(proposals, days);
  }

  /**
   * The ration on a day of the changeover from what is fed now to the ration given as goal. Stock
   * shortens no plan that is under way: what is left of the old hay shrinks with every day of it.
   */
  List<Portion> onDay(int day) {
    boolean isEnough = check(manger.servings(then)).isEnough();
    ChangeoverPlan plan = plan(manger.servings(now), manger.servings(then), isEnough);
    return day >= plan.days().size() ? then : manger.portions(plan.days().get(day - 1).amounts());
  }

  /** What it is fed before a trip on record, on it and after it. */
  Optional<TripPlan> trip() {
    return new TripPlanner(horse, request(), bounds.forageFloorKgDm(), context.asOf()).plan();
  }

  private RemedyRequest request() {
    List<Serving> coming = manger.servings(then);
    boolean differs = !manger.servings(now).equals(coming);
    return new RemedyRequest(
        new HorseFacts(
            horse.id(),
            horse.bodyWeightKg(),
            horse.conditions(),
            Math.max(1, horse.mealsPerDay().orElse(1))),
        coming,
        differs ? manger.servingsAtHand(now) : List.of(),
        manger.candidates(),
        Stream.concat(
                SearchLimits.ofDiet(groups, context.limits()).stream(),
                SearchLimits.ofTolerances(context.standards()).stream())
            .toList(),
        SearchLimits.ofMeal(groups, context.limits(), horse.bodyWeightKg()),
        intake,
        SearchBounds.needs(requirements),
        context.scales().of(horse),
        context.remedySettings(),
        this::check);
  }

  private Diet diet(List<Portion> portions) {
    return Diet.evaluate(horse, portions, requirements, context.standards());
  }

  /** The diet code as the search sees it. */
  private CheckedDiet check(List<Serving> ration) {
    List<Portion> portions = manger.portions(ration);
    Diet diet = Diet.withoutNotes(horse, portions, requirements, context.standards());
    List<CheckedLimit> checked =
        Stream.concat(judge.judge(diet, groups).stream(), hazards.alone(portions).stream())
            .filter(v -> !v.isSilent())
            .sorted(WorstVerdict.WORST_FIRST)
            .map(SearchLimits::checked)
            .toList();
    double leastCaP = context.standards().settings().number("ca_p_refuse_below");
    return new CheckedDiet(
        checked,
        Stream.of(
                Obstacles.of(diet, leastCaP).stream().map(Obstacles.Obstacle::words),
                intake.energy().stream()
                    .flatMap(band -> Obstacles.ofEnergy(diet, band).stream())
                    .map(Obstacles.Obstacle::words),
                hazards.notDiluted(portions).stream().map(RemedyFinder::hazard))
            .flatMap(words -> words)
            .distinct()
            .toList(),
        Obstacles.shortfalls(diet),
        newlyShort(diet));
  }

  private SortedSet<String> newlyShort(Diet diet) {
    SortedSet<String> codes = new TreeSet<>(Obstacles.reportedShort(diet));
    codes.removeAll(shortWithoutChange);
    return codes;
  }

  private static String hazard(Verdict verdict) {
    return "the " + verdict.limit().words() + " of its hay, which no mixing takes away";
  }

  private ChangeoverPlan plan(List<Serving> today, List<Serving> goal, boolean isEnough) {
    return Changeover.plan(
        new ChangeoverRequest(
            today,
            goal,
            new TreeSet<>(horse.conditions()),
            bounds.forageFloorKgDm(),
            exceedsSugar(),
            isEnough,
            false,
            context.scales().of(horse),
            context.remedySettings()));
  }

  /** Whether what is fed now passes a starch-and-sugar limit. */
  private boolean exceedsSugar() {
    return judge.judge(diet(now), groups).stream()
        .filter(v -> v.limit().quantity().startsWith("nsc"))
        .anyMatch(v -> v.word().code().equals("exceeds"));
  }

  /** How many first days of a changeover do not clear though its end does. */
  private int uncleared(Remedy remedy, ChangeoverPlan plan) {
    return remedy.isEnough()
        ? plan.days().stream()
            .filter(day -> !check(day.amounts()).isEnough())
            .mapToInt(ChangeoverDay::day)
            .max()
            .orElse(0)
        : 0;
  }

  /** What the changed ration lacks and today's does not. */
  private String newlyShort(Remedy remedy) {
    String codes =
        remedy.diet().stream()
            .flatMap(d -> d.shortfalls().keySet().stream())
            .filter(c -> !shortWithoutChange.contains(c))
            .collect(Collectors.joining(", "));
    return codes.isEmpty() ? "" : " It falls short of " + codes + ", which today's does not.";
  }

  private Optional<DietSummary> summary(Remedy remedy) {
    if (remedy.then().isEmpty()) {
      return Optional.empty();
    }
    Diet diet = diet(manger.portions(remedy.then()));
    return Optional.of(DietSummaries.of(diet, judge.judge(diet, groups)));
  }
}
