package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationAmounts;
import rickyard.core.nutrition.Requirements;

/** Advises one horse at a time: a pure function of the morning's context. */
public final class HorseAdviser {
  private static final double WHOLE_SHARE = 0.999;

  private final AdviceContext context;
  private final Feeding feeding;
  private final Herds herds;
  private final Counsel counsel;
  private final DietJudge judge;

  public HorseAdviser(AdviceContext context) {
    this.context = context;
    this.judge = new DietJudge(context.limits(), context.whyNotJudged());
    this.feeding = new Feeding(context);
    this.herds = new Herds(context, feeding, judge);
    this.counsel = new Counsel(context, herds);
  }

  /** The advice on a horse; whatever keeps it from being judged is said, never thrown. */
  public HorseAdvice advise(Horse horse) {
    HorseGroups groups = Grouping.of(horse, context.conditions());
    List<String> problems = new ArrayList<>(context.problems().getOrDefault(horse.id(), List.of()));
    groups
        .unknown()
        .forEach(c -> problems.add("condition \"" + c + "\" is in no table; add it or correct it"));
    Optional<Ration> ration = feeding.inForce(horse);
    List<Portion> now = feeding.weigh(horse, ration, problems);
    ComingRation coming = feeding.coming(horse, now, problems);
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Acceptance.Found accepted = feeding.accepted(horse, ration);
    SeenHorse seen = new SeenHorse(horse, groups, requirements, herds.find(horse));
    List<Portion> then =
        accepted
            .followed()
            .map(a -> counsel.onDay(a, seen, now, coming.portions()))
            .orElse(coming.portions());
    @Nullable DietSummary after = then.isEmpty() ? null : summary(seen, then);
    @Nullable DietSummary before = before(seen, ration);
    List<String> changes = Changes.of(horse.id(), context, ration, coming, accepted, before, after);
    Optional<VetCall> vetCall = VetCall.of(horse, context);
    Optional<Told> told = Told.of(horse.id(), context);
    PriorityRule.Ruling byDiet =
        PriorityRule.rule(
            new PriorityRule.Facts(
                before,
                coming.isChanged() ? summary(seen, now) : before,
                after,
                lotLimits(groups, then),
                feeding.isFedSoon(coming),
                told.map(Told::verdict).orElse(null),
                isTurned(seen, then),
                coming.isChanged(),
                isWaiting(seen, then, coming),
                isLotAsked(seen, then),
                problems));
    Optional<String> takenBack = told.flatMap(t -> t.takenBack(after));
    @Nullable TripPlan trip =
        problems.isEmpty() && after != null ? counsel.trip(seen, now, then).orElse(null) : null;
    PriorityRule.Ruling ruling =
        vetCall
            .map(v -> v.over(byDiet))
            .orElseGet(() -> worthAWord(byDiet, told.isPresent(), trip, after, then));
    RemedyFinder.Found remedies =
        problems.isEmpty() && after != null
            ? counsel.remedies(seen, now, then, after, lotLimits(groups, then))
            : RemedyFinder.Found.NONE;
    return new HorseAdvice(
        horse.id(),
        horse.clientId(),
        List.copyOf(groups.groups()),
        ruling.priority(),
        takenBack.map(t -> t + "; ").orElse("") + reason(ruling, changes),
        vetCall
            .filter(v -> CallWords.isCall(ruling))
            .map(VetCall::say)
            .orElseGet(
                () ->
                    CallWords.say(
                        horse,
                        ruling,
                        takenBack,
                        coming,
                        then,
                        isAcute(horse),
                        groups.groups(),
                        remedies)),
        before,
        problems.isEmpty() ? after : null,
        changes,
        problems,
        remedies.proposals(),
        remedies.days(),
        vetCall.isPresent(),
        coming.isChanged() || ruling.priority() != Priority.NONE,
        HorseQuestions.open(horse, groups, coming, context.answered()),
        trip);
  }

  /**
   * What is no matter of a limit and still has to be said: a step of a trip, a report withdrawn.
   */
  private PriorityRule.Ruling worthAWord(
      PriorityRule.Ruling byDiet,
      boolean isTold,
      @Nullable TripPlan trip,
      @Nullable DietSummary after,
      List<Portion> then) {
    boolean isQuiet = byDiet.priority() == Priority.NONE || byDiet.priority() == Priority.STANDING;
    if (isQuiet && trip != null && !trip.on(context.asOf()).isEmpty()) {
      return new PriorityRule.Ruling(
          Priority.NOTE,
          "on the way of its trip from "
              + trip.from()
              + " to "
              + trip.to()
              + ": fed by the day of the plan; "
              + byDiet.reason(),
          byDiet.line());
    }
    if (byDiet.priority() != Priority.NONE || isTold || after == null) {
      return byDiet;
    }
    return withdrawn(then)
        .or(() -> Worth.of(after))
        .map(
            why ->
                new PriorityRule.Ruling(Priority.NOTE, why + "; " + byDiet.reason(), byDiet.line()))
        .orElse(byDiet);
  }

  /** A hay whose report its laboratory withdrew. */
  private Optional<String> withdrawn(List<Portion> then) {
    return then.stream()
        .map(p -> p.food().id())
        .filter(id -> context.whyNotJudged().getOrDefault(id, "").contains("withdrew"))
        .findFirst()
        .map(id -> "the laboratory withdrew the report of " + id + " and nothing takes its place");
  }

  /**
   * The diet as it will be fed, with everything behind it; empty portions where nothing is known.
   */
  public TracedDiet trace(Horse horse) {
    List<String> problems = new ArrayList<>();
    List<Portion> now = feeding.weigh(horse, feeding.inForce(horse), problems);
    List<Portion> then = feeding.coming(horse, now, problems).portions();
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Diet diet = Diet.evaluate(horse, then, requirements, context.standards());
    return new TracedDiet(horse, diet, judge.judge(diet, Grouping.of(horse, context.conditions())));
  }

  /**
   * The diet as it would be with other hay.
   *
   * @param out lots that are taken out of it
   * @param lot the lot that takes their place, of known dry matter
   * @param kgPerDay of that lot, as fed
   */
  public TracedDiet withHay(Horse horse, Set<String> out, String lot, double kgPerDay) {
    List<Portion> now = feeding.weigh(horse, feeding.inForce(horse), new ArrayList<>());
    List<Portion> portions =
        new ArrayList<>(feeding.coming(horse, now, new ArrayList<>()).portions());
    portions.removeIf(p -> p.asForage() && out.contains(p.food().id()));
    portions.add(Portion.of(context.larder().find(lot, "").orElseThrow(), kgPerDay, true));
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Diet diet = Diet.evaluate(horse, portions, requirements, context.standards());
    return new TracedDiet(horse, diet, judge.judge(diet, Grouping.of(horse, context.conditions())));
  }

  private static boolean isAcute(Horse horse) {
    return horse.has("laminitis-acute");
  }

  private DietSummary summary(SeenHorse seen, List<Portion> portions) {
    Diet diet = Diet.evaluate(seen.horse(), portions, seen.requirements(), context.standards());
    return DietSummaries.of(diet, judge.judge(diet, seen.groups()), seen.herd());
  }

  /**
   * The diet that the last finished morning ended with; on a first morning the ration in force with
   * typical values, since nothing was known then.
   */
  private @Nullable DietSummary before(SeenHorse seen, Optional<Ration> ration) {
    DietSummary kept = context.previous().get(seen.horse().id());
    if (kept != null || ration.isEmpty()) {
      return kept;
    }
    RationAmounts amounts =
        feeding.amounts(seen.horse(), ration.get(), context.larder().unanalysed());
    SeenHorse alone =
        new SeenHorse(seen.horse(), seen.groups(), seen.requirements(), Optional.empty());
    return amounts.portions().isEmpty() || !amounts.isComplete()
        ? null
        : summary(alone, amounts.portions());
  }

  /** A lot's own verdict counts where that lot is all of the horse's forage. */
  private List<LimitLine> lotLimits(HorseGroups groups, List<Portion> portions) {
    double forage =
        portions.stream().filter(p -> p.food().isForage()).mapToDouble(Portion::kgDm).sum();
    return portions.stream()
        .filter(p -> p.food().isForage() && p.kgDm() >= WHOLE_SHARE * forage && forage > 0)
        .flatMap(p -> verdicts(p.food().id()).stream())
        .filter(v -> v.limit().group().equals("all") || groups.groups().contains(v.limit().group()))
        .map(DietSummaries::limit)
        .toList();
  }

  private List<Verdict> verdicts(String lot) {
    return context.lotVerdicts().getOrDefault(lot, List.of());
  }

  private boolean isTurned(SeenHorse seen, List<Portion> then) {
    return seen.items(then).anyMatch(context.turnedLots()::contains);
  }

  private boolean isWaiting(SeenHorse seen, List<Portion> portions, ComingRation coming) {
    return !HorseQuestions.open(seen.horse(), seen.groups(), coming, context.answered()).isEmpty()
        || (seen.hasSugarLimit() && isLotAsked(seen, portions));
  }

  /** Whether a forage of the ration waits for an answer of the office. */
  private boolean isLotAsked(SeenHorse seen, List<Portion> portions) {
    return seen.items(portions).anyMatch(context.askedAbout()::contains);
  }

  /** Where only a change is news, the reason names its first cause. */
  private static String reason(PriorityRule.Ruling ruling, List<String> changes) {
    boolean isChange =
        ruling.reason().startsWith("changed: ") || ruling.reason().startsWith("the ration changes");
    return isChange && !changes.isEmpty()
        ? ruling.reason() + "; why: " + changes.get(0)
        : ruling.reason();
  }
}
