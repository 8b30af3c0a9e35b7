package rickyard.core.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationAmounts;
import rickyard.core.nutrition.Rations;
import rickyard.core.nutrition.Replacement;
import rickyard.core.nutrition.Requirements;

/** Advises one horse at a time: a pure function of the morning's context. */
public final class HorseAdviser {
  private static final int LATE_PREGNANCY_MONTH = 9;
  private static final int SOON_DAYS = 2;
  private static final double WHOLE_SHARE = 0.999;

  private final AdviceContext context;
  private final Reach reach;
  private final DietJudge judge;

  public HorseAdviser(AdviceContext context) {
    this.context = context;
    this.reach =
        new Reach(
            context.larder(),
            context.deliveries(),
            context.limits(),
            context.usePerDay(),
            context.asOf());
    this.judge = new DietJudge(context.limits(), context.whyNotJudged());
  }

  /** The advice on a horse; whatever keeps it from being judged is said, never thrown. */
  public HorseAdvice advise(Horse horse) {
    HorseGroups groups = groups(horse);
    List<String> problems = new ArrayList<>(context.problems().getOrDefault(horse.id(), List.of()));
    groups
        .unknown()
        .forEach(c -> problems.add("condition \"" + c + "\" is in no table; add it or correct it"));
    Optional<Ration> ration = inForce(horse);
    List<Portion> now = weigh(horse, ration, problems);
    ComingRation coming = coming(horse, now, problems);
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Optional<Acceptance> accepted =
        ration.flatMap(
            r ->
                Acceptance.find(
                    horse.id(), context.decisions(), r, context.larder(), context.asOf()));
    List<Portion> then =
        accepted
            .map(a -> onDay(a, horse, groups, requirements, now, coming.portions()))
            .orElse(coming.portions());
    @Nullable DietSummary after =
        then.isEmpty() ? null : summary(horse, groups, then, requirements);
    @Nullable DietSummary before = before(horse, groups, ration, requirements);
    PriorityRule.Ruling ruling =
        PriorityRule.rule(
            new PriorityRule.Facts(
                before,
                coming.isChanged() ? summary(horse, groups, now, requirements) : before,
                after,
                lotLimits(groups, then),
                isFedSoon(coming),
                told(horse.id()),
                then.stream().anyMatch(p -> context.turnedLots().contains(p.food().id())),
                coming.isChanged(),
                isWaiting(horse, groups, then, coming),
                isLotAsked(then),
                problems));
    RemedyFinder.Found remedies =
        problems.isEmpty() && after != null && needsRemedy(after, lotLimits(groups, then))
            ? new RemedyFinder(horse, groups, context, requirements, now, then, reach)
                .find(isOldGone(horse, now))
            : RemedyFinder.Found.NONE;
    return new HorseAdvice(
        horse.id(),
        horse.clientId(),
        List.copyOf(groups.groups()),
        ruling.priority(),
        ruling.reason(),
        CallWords.say(horse, ruling, coming, then, isAcute(horse), remedies.proposals()),
        before,
        problems.isEmpty() ? after : null,
        changes(horse, coming, accepted, before, after),
        problems,
        remedies.proposals(),
        remedies.days(),
        isAcute(horse) && !horse.vetPlan(),
        coming.isChanged() || ruling.priority() != Priority.NONE,
        HorseQuestions.open(horse, groups, coming, context.answered()));
  }

  /**
   * The diet as it will be fed, with everything behind it; empty portions where nothing is known.
   */
  public TracedDiet trace(Horse horse) {
    List<String> problems = new ArrayList<>();
    List<Portion> now = weigh(horse, inForce(horse), problems);
    List<Portion> then = coming(horse, now, problems).portions();
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Diet diet = Diet.evaluate(horse, then, requirements, context.standards());
    return new TracedDiet(horse, diet, judge.judge(diet, groups(horse)));
  }

  /**
   * The diet as it would be with other hay.
   *
   * @param out lots that are taken out of it
   * @param lot the lot that takes their place, of known dry matter
   * @param kgPerDay of that lot, as fed
   */
  public TracedDiet withHay(Horse horse, Set<String> out, String lot, double kgPerDay) {
    List<Portion> portions =
        new ArrayList<>(
            coming(horse, weigh(horse, inForce(horse), new ArrayList<>()), new ArrayList<>())
                .portions());
    portions.removeIf(p -> p.asForage() && out.contains(p.food().id()));
    portions.add(Portion.of(context.larder().find(lot, "").orElseThrow(), kgPerDay, true));
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Diet diet = Diet.evaluate(horse, portions, requirements, context.standards());
    return new TracedDiet(horse, diet, judge.judge(diet, groups(horse)));
  }

  private Optional<Ration> inForce(Horse horse) {
    return Rations.inForce(
        context.rations().stream().filter(r -> r.horseId().equals(horse.id())).toList(),
        context.asOf());
  }

  /** What is fed on the day of the changeover to an accepted remedy. */
  private List<Portion> onDay(
      Acceptance accepted,
      Horse horse,
      HorseGroups groups,
      Requirements requirements,
      List<Portion> now,
      List<Portion> coming) {
    List<Portion> goal = accepted.applied(coming, context.larder());
    return new RemedyFinder(horse, groups, context, requirements, now, goal, reach)
        .onDay(accepted.day());
  }

  /** A remedy is looked for where a limit that asks for a change is not cleared. */
  private static boolean needsRemedy(DietSummary after, List<LimitLine> lotLimits) {
    return Stream.concat(after.limits().stream(), lotLimits.stream())
        .filter(l -> l.severity().equals("stop") || l.severity().equals("change"))
        .anyMatch(l -> !l.verdict().equals("clears") && !l.verdict().equals("no-limit"));
  }

  /** Whether the forage fed now is used up at the client's yard. */
  private boolean isOldGone(Horse horse, List<Portion> now) {
    return now.stream()
        .filter(p -> p.asForage() && context.larder().findLot(p.food().id()).isPresent())
        .anyMatch(
            p ->
                context.deliveries().stream()
                        .filter(d -> d.clientId().equals(horse.clientId()))
                        .filter(d -> d.lotId().equals(p.food().id()))
                        .anyMatch(d -> d.finishedOn().isPresent())
                    && context.deliveries().stream()
                        .filter(d -> d.clientId().equals(horse.clientId()))
                        .filter(d -> d.lotId().equals(p.food().id()))
                        .allMatch(d -> d.finishedOn().isPresent()));
  }

  private HorseGroups groups(Horse horse) {
    SortedSet<String> conditions = new TreeSet<>(horse.conditions());
    if (horse.status() == HorseStatus.PREGNANT) {
      conditions.add("pregnant");
      if (horse.month().orElse(0) >= LATE_PREGNANCY_MONTH) {
        conditions.add("pregnant-late");
      }
    }
    return context.conditions().of(conditions);
  }

  private static boolean isAcute(Horse horse) {
    return horse.has("laminitis-acute");
  }

  private List<Portion> weigh(Horse horse, Optional<Ration> ration, List<String> problems) {
    if (ration.isEmpty()) {
      problems.add("no ration is on record for it on " + context.asOf());
      return List.of();
    }
    RationAmounts amounts = amounts(horse, ration.get(), context.larder());
    amounts.problems().forEach(p -> problems.add(p.words()));
    return amounts.portions();
  }

  private RationAmounts amounts(Horse horse, Ration ration, Larder larder) {
    return RationAmounts.of(
        horse, ration, larder::find, context.measures(), context.asOf(), context.standards());
  }

  private ComingRation coming(Horse horse, List<Portion> now, List<String> problems) {
    ComingRation coming =
        ComingRation.of(
            horse.clientId(),
            now,
            context.deliveries(),
            lot -> context.larder().find(lot, ""),
            context.asOf(),
            context.standards());
    coming.withoutValue().forEach(lot -> problems.add("nobody knows the dry matter of lot " + lot));
    return coming;
  }

  private DietSummary summary(
      Horse horse, HorseGroups groups, List<Portion> portions, Requirements requirements) {
    Diet diet = Diet.evaluate(horse, portions, requirements, context.standards());
    return DietSummaries.of(diet, judge.judge(diet, groups));
  }

  /**
   * The diet that the last finished morning ended with; on a first morning the ration in force with
   * typical values, since nothing was known then.
   */
  private @Nullable DietSummary before(
      Horse horse, HorseGroups groups, Optional<Ration> ration, Requirements requirements) {
    DietSummary kept = context.previous().get(horse.id());
    if (kept != null || ration.isEmpty()) {
      return kept;
    }
    RationAmounts amounts = amounts(horse, ration.get(), context.larder().unanalysed());
    return amounts.portions().isEmpty() || !amounts.isComplete()
        ? null
        : summary(horse, groups, amounts.portions(), requirements);
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

  /** Whether what is judged is fed now, or the lots that are new in it open within two days. */
  private boolean isFedSoon(ComingRation coming) {
    LocalDate soon = context.asOf().plusDays(SOON_DAYS);
    return !coming.isChanged()
        || coming.replacements().stream()
            .map(Replacement::delivery)
            .anyMatch(
                d ->
                    d.openedOn().isPresent()
                        || d.opensOn().isEmpty()
                        || !d.opensOn().get().isAfter(soon));
  }

  /** The verdict that the client was told last about this horse; null if never. */
  private @Nullable String told(String horseId) {
    return context.decisions().stream()
        .filter(d -> d.kind().equals("told") && d.about().equals(horseId))
        .filter(d -> !d.date().isAfter(context.asOf()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .map(d -> toldVerdict(d.value().strip(), horseId))
        .orElse(null);
  }

  /** A value that is no verdict, or blank, means what the last morning said. */
  private String toldVerdict(String value, String horseId) {
    if (Arrays.stream(Word.values()).anyMatch(w -> w.code().equals(value))) {
      return value;
    }
    DietSummary before = context.previous().get(horseId);
    return before == null ? value : before.verdict();
  }

  private boolean isWaiting(
      Horse horse, HorseGroups groups, List<Portion> portions, ComingRation coming) {
    return !HorseQuestions.open(horse, groups, coming, context.answered()).isEmpty()
        || (HorseQuestions.hasSugarLimit(groups) && isLotAsked(portions));
  }

  /** Whether a forage of the ration waits for an answer of the office. */
  private boolean isLotAsked(List<Portion> portions) {
    return portions.stream().anyMatch(p -> context.askedAbout().contains(p.food().id()));
  }

  private List<String> changes(
      Horse horse,
      ComingRation coming,
      Optional<Acceptance> accepted,
      @Nullable DietSummary before,
      @Nullable DietSummary after) {
    List<String> changes = new ArrayList<>();
    accepted.map(Acceptance::words).ifPresent(changes::add);
    context.decisions().stream()
        .filter(d -> d.kind().equals("override") && d.about().equals(horse.id()))
        .map(
            d ->
                "override by "
                    + d.by()
                    + " on "
                    + d.date()
                    + ": "
                    + d.value()
                    + " ("
                    + d.why()
                    + ")")
        .forEach(changes::add);
    for (Replacement replacement : coming.replacements()) {
      Delivery delivery = replacement.delivery();
      changes.add(
          "lot "
              + delivery.lotId()
              + " takes the place of "
              + delivery.replaces().orElse("")
              + delivery.opensOn().map(d -> " from " + d).orElse(", opening day not said")
              + ", at equal dry matter");
    }
    if (before != null && after != null && !before.verdict().equals(after.verdict())) {
      changes.add("verdict: " + before.verdict() + " before, " + after.verdict() + " now");
    }
    return changes;
  }
}
