package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.WorstVerdict;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;
import rickyard.core.remedy.Candidate;
import rickyard.core.remedy.Changeover;
import rickyard.core.remedy.ChangeoverDay;
import rickyard.core.remedy.ChangeoverPlan;
import rickyard.core.remedy.ChangeoverRequest;
import rickyard.core.remedy.CheckedDiet;
import rickyard.core.remedy.CheckedLimit;
import rickyard.core.remedy.HorseFacts;
import rickyard.core.remedy.IntakeRange;
import rickyard.core.remedy.MassUnit;
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
  private final LotHazards hazards;

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
    this.hazards = new LotHazards(context.lotVerdicts(), context.limits(), groups);
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
    double floor = forageFloorKgDm();
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
        Stream.concat(
                SearchLimits.ofDiet(groups, limits).stream(),
                SearchLimits.ofTolerances(standards).stream())
            .toList(),
        SearchLimits.ofMeal(groups, limits, horse.bodyWeightKg()),
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

  /** Least forage of any day, kg of dry matter: the vet's line, or the last one with a vet plan. */
  private double forageFloorKgDm() {
    IntakeRule rule = standards.intakeRule(horse);
    double percent = horse.vetPlan() ? rule.refuseBelow() : rule.vetBelow();
    return percent * standards.settings().lowEndKg(horse) / 100;
  }

  private IntakeRange intake() {
    IntakeRule rule = standards.intakeRule(horse);
    double floor = forageFloorKgDm();
    double today = then.stream().mapToDouble(Portion::kgDm).sum();
    double least = Math.max(floor, leastOfAll(rule, today));
    double ceiling = Math.max(rule.usualMax() * standards.settings().lowEndKg(horse) / 100, today);
    return new IntakeRange(
        Math.min(least, ceiling),
        ceiling,
        Math.min(floor, ceiling),
        rule.strawUsualPercent() / 100);
  }

  /**
   * Least dry matter in all, kg: without a vet plan a donkey, a miniature, a pregnant, lactating or
   * sick animal is given no less than today, as far as it would eat by itself.
   */
  private double leastOfAll(IntakeRule rule, double today) {
    return rule.isNeverRestricted() && !horse.vetPlan()
        ? Math.min(today, rule.adlib() / 100 * horse.bodyWeightKg())
        : 0;
  }

  private List<NutrientNeed> needs() {
    List<NutrientNeed> needs = new ArrayList<>();
    for (Nutrient nutrient : Nutrient.values()) {
      OptionalDouble need = requirements.get(nutrient).atLeast();
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
    List<Portion> portions = portions(ration);
    Diet diet = diet(portions);
    List<CheckedLimit> checked =
        Stream.concat(judge.judge(diet, groups).stream(), hazards.alone(portions).stream())
            .filter(v -> !v.isSilent())
            .sorted(WorstVerdict.WORST_FIRST)
            .map(SearchLimits::checked)
            .toList();
    double leastCaP = standards.settings().number("ca_p_refuse_below");
    return new CheckedDiet(
        checked,
        Stream.concat(
                Obstacles.of(diet, leastCaP).stream().map(Obstacles.Obstacle::words),
                hazards.notDiluted(portions).stream().map(RemedyFinder::hazard))
            .distinct()
            .toList(),
        Obstacles.shortfalls(diet));
  }

  private static String hazard(Verdict verdict) {
    return "the " + verdict.limit().words() + " of its hay, which no mixing takes away";
  }

  private List<Portion> portions(List<Serving> ration) {
    return ration.stream()
        .filter(a -> a.kg() > 0)
        .map(
            a ->
                new Portion(
                    item(Reach.key(a.item())).food(),
                    a.kg(),
                    0,
                    a.fedAsForage(),
                    a.meals(),
                    prepared(Reach.key(a.item()))))
        .toList();
  }

  /** An item that is soaked or steamed today stays so. */
  private String prepared(String key) {
    return then.stream()
        .filter(p -> p.food().key().equals(key))
        .map(Portion::prepared)
        .findFirst()
        .orElse(Portion.DRY);
  }

  private ChangeoverPlan plan(Remedy remedy, boolean isOldGone) {
    if (remedy.then().isEmpty()) {
      return new ChangeoverPlan(List.of(), false, List.of());
    }
    double floor = forageFloorKgDm();
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
    String words =
        newlyShort(remedy) + (plan.words().isEmpty() ? "" : " " + String.join(" ", plan.words()));
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

  /** What the changed ration lacks and today's does not. */
  private String newlyShort(Remedy remedy) {
    Set<String> today = Obstacles.shortfalls(diet(then)).keySet();
    String codes =
        remedy.diet().stream()
            .flatMap(d -> d.shortfalls().keySet().stream())
            .filter(c -> !today.contains(c))
            .collect(Collectors.joining(", "));
    return codes.isEmpty() ? "" : " It falls short of " + codes + ", which today's does not.";
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
