package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.judgement.Bound;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.IfMissing;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.WorstVerdict;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Floor;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.NutrientLine;
import rickyard.core.nutrition.NutrientStatus;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;
import rickyard.core.remedy.Candidate;
import rickyard.core.remedy.Changeover;
import rickyard.core.remedy.ChangeoverDay;
import rickyard.core.remedy.ChangeoverPlan;
import rickyard.core.remedy.ChangeoverRequest;
import rickyard.core.remedy.CheckedDiet;
import rickyard.core.remedy.CheckedLimit;
import rickyard.core.remedy.DietLimit;
import rickyard.core.remedy.HorseFacts;
import rickyard.core.remedy.IntakeRange;
import rickyard.core.remedy.MassUnit;
import rickyard.core.remedy.MealLimit;
import rickyard.core.remedy.NutrientNeed;
import rickyard.core.remedy.Remedy;
import rickyard.core.remedy.RemedyItem;
import rickyard.core.remedy.RemedyRequest;
import rickyard.core.remedy.RemedySearch;
import rickyard.core.remedy.RemedySettings;
import rickyard.core.remedy.Serving;

/**
 * Finds proposals for one horse: hands the search what it may know, and checks every proposal with
 * the same diet code and the same limits as the morning's own diets. Used once.
 */
final class RemedyFinder {
  private final Horse horse;
  private final HorseGroups groups;
  private final FeedingStandards standards;
  private final DietJudge judge;
  private final List<Limit> limits;
  private final Requirements requirements;
  private final RemedySettings settings;
  private final MassUnit units;
  private final SortedMap<String, Reach.Item> items;
  private final List<Portion> now;
  private final List<Portion> then;
  private final Set<String> presentObstacles;

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
    this.standards = context.standards();
    this.judge = new DietJudge(context.limits(), context.whyNotJudged());
    this.limits = context.limits();
    this.requirements = requirements;
    this.settings = context.remedySettings();
    this.units = context.units();
    this.now = now;
    this.then = then;
    double ownUse = 0;
    this.items = new TreeMap<>(reach.of(horse.clientId(), ownUse));
    for (Portion portion : then) {
      items.putIfAbsent(portion.food().key(), reach.fed(portion.food(), horse.clientId()));
    }
    for (Portion portion : now) {
      items.putIfAbsent(portion.food().key(), reach.fed(portion.food(), horse.clientId()));
    }
    this.presentObstacles =
        obstacles(diet(then)).stream().map(Obstacle::code).collect(Collectors.toSet());
  }

  /** Proposals and the days of their changeovers. */
  record Found(List<Proposal> proposals, List<ChangeoverLine> days) {
    static final Found NONE = new Found(List.of(), List.of());

    Found {
      proposals = List.copyOf(proposals);
      days = List.copyOf(days);
    }
  }

  Found find(boolean isOldGone) {
    RemedyRequest request = request();
    List<Proposal> proposals = new ArrayList<>();
    List<ChangeoverLine> days = new ArrayList<>();
    int rank = 0;
    for (Remedy remedy : RemedySearch.search(request)) {
      rank++;
      ChangeoverPlan plan = plan(remedy, isOldGone);
      proposals.add(proposal(rank, remedy, plan));
      days.addAll(lines(rank, plan));
    }
    return new Found(proposals, days);
  }

  /** The ration on a day of the changeover from what is fed now to the ration given as goal. */
  List<Portion> onDay(int day) {
    IntakeRule rule = standards.intakeRule(horse);
    double judged = standards.settings().lowEndKg(horse);
    double floor = (horse.vetPlan() ? rule.refuseBelow() : rule.vetBelow()) * judged / 100;
    ChangeoverPlan plan =
        Changeover.plan(
            new ChangeoverRequest(
                amounts(now),
                amounts(then),
                new TreeSet<>(horse.conditions()),
                floor,
                false,
                true,
                false,
                units,
                settings));
    boolean isOver = day >= plan.days().size();
    return isOver ? then : portions(plan.days().get(day - 1).amounts());
  }

  private RemedyRequest request() {
    boolean differs = !amounts(now).equals(amounts(then));
    return new RemedyRequest(
        new HorseFacts(
            horse.id(),
            horse.bodyWeightKg(),
            horse.conditions(),
            Math.max(1, horse.mealsPerDay().orElse(1))),
        amounts(then),
        differs ? amounts(now) : List.of(),
        items.values().stream().map(Reach.Item::candidate).toList(),
        dietLimits(),
        mealLimits(),
        intake(),
        needs(),
        units,
        settings,
        this::check);
  }

  private List<Serving> amounts(List<Portion> portions) {
    return portions.stream().map(this::amount).toList();
  }

  private Serving amount(Portion portion) {
    return new Serving(
        candidate(portion.food().key()), portion.kgAsFed(), portion.asForage(), portion.meals());
  }

  private Candidate candidate(String key) {
    return item(key).candidate();
  }

  private Reach.Item item(String key) {
    Reach.Item item = items.get(key);
    if (item == null) {
      throw new IllegalStateException("not in reach and not fed: " + key);
    }
    return item;
  }

  private static boolean isBinding(Limit limit) {
    return limit.severity() == Severity.STOP || limit.severity() == Severity.CHANGE;
  }

  private List<DietLimit> dietLimits() {
    return groups.limits(limits, LimitSubject.DIET).stream()
        .filter(RemedyFinder::isBinding)
        .filter(l -> l.unit().basis() == Basis.DRY_MATTER)
        .map(
            l ->
                new DietLimit(
                    l.id(),
                    l.quantity(),
                    l.words(),
                    l.value(),
                    l.bound() == Bound.MAX,
                    l.guardFactor(),
                    l.ifMissing() == IfMissing.ASK))
        .toList();
  }

  private List<MealLimit> mealLimits() {
    return groups.limits(limits, LimitSubject.BUCKET_MEAL).stream()
        .filter(RemedyFinder::isBinding)
        .map(
            l ->
                new MealLimit(
                    l.id(),
                    l.quantity(),
                    l.words(),
                    l.value() * (l.unit().unit() == Unit.G_PER_KG ? horse.bodyWeightKg() : 1),
                    l.guardFactor()))
        .toList();
  }

  private IntakeRange intake() {
    IntakeRule rule = standards.intakeRule(horse);
    double judged = standards.settings().lowEndKg(horse);
    double floor = (horse.vetPlan() ? rule.refuseBelow() : rule.vetBelow()) * judged / 100;
    double today = then.stream().mapToDouble(Portion::kgDm).sum();
    double ceiling = Math.max(rule.usualMax() * horse.bodyWeightKg() / 100, today);
    return new IntakeRange(
        Math.min(floor, ceiling), ceiling, Math.min(floor, ceiling), rule.strawHardPercent() / 100);
  }

  private List<NutrientNeed> needs() {
    List<NutrientNeed> needs = new ArrayList<>();
    for (Nutrient nutrient : Nutrient.values()) {
      OptionalDouble need = requirements.perDay(nutrient);
      if (nutrient.isSummed() && need.isPresent() && need.getAsDouble() > 0) {
        needs.add(new NutrientNeed(nutrient.code(), need.getAsDouble()));
      }
    }
    return needs;
  }

  private Diet diet(List<Portion> portions) {
    return Diet.evaluate(horse, portions, requirements, standards);
  }

  /** The diet code as the search sees it. */
  private CheckedDiet check(List<Serving> ration) {
    Diet diet = diet(portions(ration));
    List<CheckedLimit> checked =
        judge.judge(diet, groups).stream()
            .sorted(WorstVerdict.WORST_FIRST)
            .map(RemedyFinder::checked)
            .toList();
    List<String> obstacles =
        obstacles(diet).stream()
            .filter(o -> !presentObstacles.contains(o.code()))
            .map(Obstacle::words)
            .toList();
    return new CheckedDiet(checked, obstacles, shortfalls(diet));
  }

  private List<Portion> portions(List<Serving> ration) {
    return ration.stream()
        .filter(a -> a.kg() > 0)
        .map(
            a ->
                new Portion(
                    item(Reach.key(a.item())).food(), a.kg(), 0, a.fedAsForage(), a.meals()))
        .toList();
  }

  private static CheckedLimit checked(Verdict verdict) {
    return new CheckedLimit(
        verdict.limit().id(),
        verdict.limit().words(),
        verdict.limit().value(),
        verdict.limit().unit().text(),
        verdict.value().map(v -> OptionalDouble.of(v.best())).orElseGet(OptionalDouble::empty),
        verdict.value().map(v -> OptionalDouble.of(v.u())).orElseGet(OptionalDouble::empty),
        verdict.pOver(),
        verdict.word().code(),
        isBinding(verdict.limit()));
  }

  /** Something that stands against feeding a diet besides the limits. */
  private record Obstacle(String code, String words) {}

  private static List<Obstacle> obstacles(Diet diet) {
    List<Obstacle> found = new ArrayList<>();
    Floor floor = diet.intake().floor();
    if (floor == Floor.REFUSE || floor == Floor.NEEDS_VET_PLAN) {
      found.add(new Obstacle("floor-" + floor.code(), diet.intake().words()));
    }
    if (diet.intake().isStrawOverHardCap()) {
      found.add(new Obstacle("straw", "more straw than is allowed for its type"));
    }
    for (NutrientLine line : diet.lines().values()) {
      if (line.status() == NutrientStatus.ABOVE_CEILING) {
        found.add(
            new Obstacle(
                "ceiling-" + line.nutrient().code(),
                line.nutrient().code() + " may pass what is tolerated"));
      }
    }
    return found;
  }

  private static SortedMap<String, Double> shortfalls(Diet diet) {
    SortedMap<String, Double> short_ = new TreeMap<>();
    for (NutrientLine line : diet.lines().values()) {
      if (line.status() == NutrientStatus.BELOW && line.requirement().isPresent()) {
        double missing = line.requirement().getAsDouble() - line.supply().best();
        if (missing > 0) {
          short_.put(line.nutrient().code(), missing);
        }
      }
    }
    return short_;
  }

  private ChangeoverPlan plan(Remedy remedy, boolean isOldGone) {
    if (remedy.then().isEmpty()) {
      return new ChangeoverPlan(List.of(), false, List.of());
    }
    double judged = standards.settings().lowEndKg(horse);
    IntakeRule rule = standards.intakeRule(horse);
    double floor = (horse.vetPlan() ? rule.refuseBelow() : rule.vetBelow()) * judged / 100;
    return Changeover.plan(
        new ChangeoverRequest(
            amounts(now),
            remedy.then(),
            new TreeSet<>(horse.conditions()),
            floor,
            exceedsSugar(),
            remedy.isEnough(),
            isOldGone,
            units,
            settings));
  }

  /** Whether what is fed now passes a starch-and-sugar limit. */
  private boolean exceedsSugar() {
    return judge.judge(diet(now), groups).stream()
        .filter(v -> v.limit().quantity().startsWith("nsc"))
        .anyMatch(v -> v.word().code().equals("exceeds"));
  }

  private Proposal proposal(int rank, Remedy remedy, ChangeoverPlan plan) {
    String words = plan.words().isEmpty() ? "" : " " + String.join(" ", plan.words());
    @Nullable DietSummary summary = null;
    if (!remedy.then().isEmpty()) {
      Diet diet = diet(portions(remedy.then()));
      summary = DietSummaries.of(diet, judge.judge(diet, groups));
    }
    return new Proposal(
        rank,
        remedy.kind().code(),
        remedy.isEnough(),
        remedy.why() + words,
        remedy.items().stream().map(RemedyFinder::line).toList(),
        summary);
  }

  private static ProposalItem line(RemedyItem item) {
    return new ProposalItem(
        item.item().id(),
        item.item().batch(),
        item.item().name(),
        item.item().role(),
        item.nowKg(),
        item.thenKg(),
        boxed(item.unitsPerMonth()),
        boxed(item.costPerDay()),
        boxed(item.daysOfStock()));
  }

  private static @Nullable Double boxed(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  private static List<ChangeoverLine> lines(int rank, ChangeoverPlan plan) {
    List<ChangeoverLine> lines = new ArrayList<>();
    for (ChangeoverDay day : plan.days()) {
      for (Serving amount : day.amounts()) {
        lines.add(new ChangeoverLine(rank, day.day(), amount.item().id(), amount.kg()));
      }
    }
    return lines;
  }
}
