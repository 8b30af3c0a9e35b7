package rickyard.core.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.Requirements;

/** Advises one horse at a time: a pure function of the morning's context. */
public final class HorseAdviser {
  private static final int LATE_PREGNANCY_MONTH = 9;
  private static final int SOON_DAYS = 2;
  private static final double WHOLE_SHARE = 0.999;

  private final AdviceContext context;
  private final RationBook book;
  private final DietJudge judge;

  public HorseAdviser(AdviceContext context) {
    this.context = context;
    this.book =
        new RationBook(
            context.rations(),
            context.deliveries(),
            context.measures(),
            context.standards(),
            context.asOf());
    this.judge = new DietJudge(context.limits());
  }

  /** The advice on a horse; whatever keeps it from being judged is said, never thrown. */
  public HorseAdvice advise(Horse horse) {
    HorseGroups groups = groups(horse);
    List<String> problems = new ArrayList<>(context.problems().getOrDefault(horse.id(), List.of()));
    groups
        .unknown()
        .forEach(c -> problems.add("condition \"" + c + "\" is in no table; add it or correct it"));
    Optional<Ration> ration = book.inForce(horse.id());
    List<Portion> now = weigh(horse, ration, context.larder(), problems);
    List<Delivery> deliveries = book.replacing(horse.clientId());
    List<Portion> then = changed(now, deliveries);
    Evaluated after = then.isEmpty() ? Evaluated.NONE : evaluate(horse, groups, then);
    DietSummary before = before(horse, groups, ration);
    PriorityRule.Facts facts =
        new PriorityRule.Facts(
            before,
            after.summary(),
            lotLimits(groups, then),
            isFedSoon(now, then, deliveries),
            told(horse.id()),
            then.stream().anyMatch(p -> context.turnedLots().contains(p.food().id())),
            isOther(now, then),
            isWaiting(horse, groups, then),
            problems);
    PriorityRule.Ruling ruling = PriorityRule.rule(facts);
    return new HorseAdvice(
        horse.id(),
        horse.clientId(),
        List.copyOf(groups.groups()),
        ruling.priority(),
        ruling.reason(),
        CallWords.say(horse, ruling, then, isAcute(horse)),
        before,
        problems.isEmpty() ? after.summary() : null,
        changes(now, then, deliveries, before, after.summary()),
        problems,
        List.of(),
        List.of(),
        isAcute(horse) && !horse.vetPlan(),
        isOther(now, then) || ruling.priority() != Priority.NONE);
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

  private List<Portion> weigh(
      Horse horse, Optional<Ration> ration, Larder larder, List<String> problems) {
    if (ration.isEmpty()) {
      problems.add("no ration is on record for it on " + context.asOf());
      return List.of();
    }
    RationBook.Weighed weighed = book.weigh(ration.get(), horse, larder);
    problems.addAll(weighed.problems());
    return weighed.portions();
  }

  private List<Portion> changed(List<Portion> now, List<Delivery> deliveries) {
    List<Portion> portions = now;
    for (Delivery delivery : deliveries) {
      portions = book.replaced(portions, delivery, context.larder());
    }
    return portions;
  }

  /** A diet with its verdicts and its rows; no summary where there is nothing to evaluate. */
  private record Evaluated(@Nullable DietSummary summary) {
    static final Evaluated NONE = new Evaluated((DietSummary) null);
  }

  private Evaluated evaluate(Horse horse, HorseGroups groups, List<Portion> portions) {
    return new Evaluated(summary(horse, groups, portions));
  }

  private DietSummary summary(Horse horse, HorseGroups groups, List<Portion> portions) {
    Requirements requirements = Requirements.of(horse, context.asOf(), context.standards());
    Diet diet = Diet.evaluate(horse, portions, requirements, context.standards());
    return DietSummaries.of(diet, judge.judge(diet, groups));
  }

  /**
   * The diet that the last finished morning ended with; on a first morning the ration in force with
   * typical values, since nothing was known then.
   */
  private @Nullable DietSummary before(Horse horse, HorseGroups groups, Optional<Ration> ration) {
    DietSummary kept = context.previous().get(horse.id());
    if (kept != null || ration.isEmpty()) {
      return kept;
    }
    Larder nothingKnown = context.larder().unanalysed();
    RationBook.Weighed weighed = book.weigh(ration.get(), horse, nothingKnown);
    return weighed.portions().isEmpty() || !weighed.problems().isEmpty()
        ? null
        : summary(horse, groups, weighed.portions());
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
  private boolean isFedSoon(List<Portion> now, List<Portion> then, List<Delivery> deliveries) {
    if (!isOther(now, then)) {
      return true;
    }
    LocalDate soon = context.asOf().plusDays(SOON_DAYS);
    return deliveries.stream()
        .filter(d -> then.stream().anyMatch(p -> p.food().id().equals(d.lotId())))
        .anyMatch(d -> d.opensOn().isEmpty() || !d.opensOn().get().isAfter(soon));
  }

  private static boolean isOther(List<Portion> now, List<Portion> then) {
    return !keys(now).equals(keys(then));
  }

  private static Set<String> keys(List<Portion> portions) {
    return portions.stream()
        .map(p -> p.food().key())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The verdict that the client was told last about this horse; null if never. */
  private @Nullable String told(String horseId) {
    return context.decisions().stream()
        .filter(d -> d.kind().equals("told") && d.about().equals(horseId))
        .filter(d -> !d.date().isAfter(context.asOf()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .map(d -> d.value().strip())
        .orElse(null);
  }

  private boolean isWaiting(Horse horse, HorseGroups groups, List<Portion> portions) {
    if (groups.groups().stream().allMatch(g -> g.startsWith("pregnant"))) {
      return false;
    }
    return !outsideQuestions(horse).isEmpty()
        || portions.stream().anyMatch(p -> context.askedAbout().contains(p.food().id()));
  }

  /**
   * What is eaten outside the ration and not settled: {@code grazing} or {@code extras}; a herd on
   * a shared bale is known by the register and judged elsewhere.
   */
  List<String> outsideQuestions(Horse horse) {
    List<String> open = new ArrayList<>();
    boolean grazes =
        horse.grazingHoursPerDay().isEmpty() || horse.grazingHoursPerDay().getAsDouble() > 0;
    if (grazes && !context.answered().contains("grazing:" + horse.id())) {
      open.add("grazing");
    }
    if (horse.extras() != Extras.NONE && !context.answered().contains("extras:" + horse.id())) {
      open.add("extras");
    }
    return open;
  }

  private static List<String> changes(
      List<Portion> now,
      List<Portion> then,
      List<Delivery> deliveries,
      @Nullable DietSummary before,
      @Nullable DietSummary after) {
    List<String> changes = new ArrayList<>();
    for (Delivery delivery : deliveries) {
      String old = delivery.replaces().orElse("");
      if (now.stream().anyMatch(p -> p.food().id().equals(old))
          && then.stream().anyMatch(p -> p.food().id().equals(delivery.lotId()))) {
        changes.add(
            "lot "
                + delivery.lotId()
                + " takes the place of "
                + old
                + delivery.opensOn().map(d -> " from " + d).orElse(", opening day not said")
                + ", at equal dry matter");
      }
    }
    if (before != null && after != null && !before.verdict().equals(after.verdict())) {
      changes.add("verdict: " + before.verdict() + " before, " + after.verdict() + " now");
    }
    return changes;
  }
}
