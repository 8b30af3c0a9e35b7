package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;

/**
 * Finds who eats hay of lots, how much, and which lots each may be given. A horse counts with what
 * its people are told to feed: the first proposal that is enough, else what it will be fed. Where
 * that clears it keeps to it, so that the plan and the letter say one thing; only horses that are
 * set free, since hay is scarce, may be given whatever clears for them.
 */
final class Eaters {
  private static final String DENTAL = "dental";

  private final CoOpContext context;
  private final LotStandings standings;
  private final Set<String> free;
  private final List<Eater> eaters = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /** Lots that clear for the same groups; most horses of a network are alike in this. */
  private final Map<SortedSet<String>, Set<String>> clearedHay = new HashMap<>();

  /**
   * @param free horses that need not keep to what their people are told
   */
  Eaters(CoOpContext context, LotStandings standings, Set<String> free) {
    this.context = context;
    this.standings = standings;
    this.free = Set.copyOf(free);
    find();
  }

  List<Eater> eaters() {
    return List.copyOf(eaters);
  }

  /** What could not be counted, in plain words. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  private void find() {
    SortedMap<String, List<Eater.Member>> bales = new TreeMap<>();
    List<String> unknown = new ArrayList<>();
    for (HorseAdvice advice : context.advice()) {
      @Nullable Horse horse = context.horses().get(advice.horse());
      @Nullable DietSummary fed = fed(advice);
      if (horse == null || fed == null) {
        unknown.add(advice.horse());
        continue;
      }
      Eater.Member member = member(horse, advice, fed);
      if (member.kgDm() > 0) {
        String bale = horse.herd().isEmpty() ? horse.id() : horse.clientId() + "/" + horse.herd();
        bales.computeIfAbsent(bale, b -> new ArrayList<>()).add(member);
      }
    }
    bales.forEach(this::add);
    if (!unknown.isEmpty()) {
      unknown.sort(Comparator.naturalOrder());
      notes.add("not counted, since what they are fed is not known: " + String.join(", ", unknown));
    }
  }

  /** What its people are told to feed it, as things stand. */
  private @Nullable DietSummary fed(HorseAdvice advice) {
    return Optional.of(advice)
        .filter(a -> !free.contains(a.horse()))
        .flatMap(HorseAdvice::advised)
        .flatMap(p -> Optional.ofNullable(p.diet()))
        .filter(diet -> canChew(advice, diet))
        .orElse(advice.after());
  }

  /** Whether a horse can chew all hay of a ration, or eats it already. */
  private boolean canChew(HorseAdvice advice, DietSummary diet) {
    boolean isDental =
        Optional.ofNullable(context.horses().get(advice.horse()))
            .filter(h -> h.has(DENTAL))
            .isPresent();
    Set<String> eaten =
        Optional.ofNullable(advice.after()).stream()
            .flatMap(d -> d.portions().stream())
            .map(PortionLine::item)
            .collect(Collectors.toSet());
    return !isDental
        || diet.portions().stream()
            .filter(p -> p.asForage() && isHay(p.item()) && !eaten.contains(p.item()))
            .allMatch(p -> isChewable(p.item()));
  }

  private Eater.Member member(Horse horse, HorseAdvice advice, DietSummary fed) {
    SortedMap<String, Double> kg = new TreeMap<>();
    SortedMap<String, Double> dm = new TreeMap<>();
    for (PortionLine line : fed.portions()) {
      if (line.asForage() && line.dmKg() > 0 && isHay(line.item())) {
        kg.merge(line.item(), line.kg(), Double::sum);
        dm.merge(line.item(), line.dmKg(), Double::sum);
      }
    }
    return new Eater.Member(horse, advice, fed, replaced(advice, fed), kg, dm);
  }

  private SortedSet<String> replaced(HorseAdvice advice, DietSummary fed) {
    return Stream.concat(Stream.of(fed), Optional.ofNullable(advice.after()).stream())
        .flatMap(d -> d.portions().stream())
        .filter(p -> p.asForage() && isHay(p.item()))
        .map(PortionLine::item)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Straw and bagged feeds stay as they are: only hay of lots is shared out. */
  private boolean isHay(String item) {
    return context.larder().findLot(item).isPresent()
        && context.larder().find(item, "").filter(f -> f.isForage() && !f.isStraw()).isPresent();
  }

  private void add(String id, List<Eater.Member> members) {
    SortedSet<String> groups =
        members.stream()
            .flatMap(m -> m.advice().groups().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    SortedSet<String> limited = standings.limited(groups);
    Optional<String> group =
        (limited.isEmpty() ? standings.dietLimited(groups) : limited)
            .stream()
                .min(
                    Comparator.comparingInt((String g) -> context.share().rank(g))
                        .thenComparing(g -> g));
    SortedSet<String> now =
        members.stream()
            .flatMap(m -> m.dmByLot().keySet().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    Eater eater =
        new Eater(
            id,
            groups,
            limited,
            group.orElse(""),
            group.map(context.share()::rank).orElse(context.share().rankOfOthers()),
            members,
            may(groups, now, members),
            now,
            false);
    boolean isKept = isMixedAndClears(eater);
    if (isKept || (limited.isEmpty() && now.size() > 1)) {
      now.forEach(lot -> eaters.add(ofMixture(eater, lot, isKept)));
    } else {
      eaters.add(keepsToIt(eater) ? eater.withMay(now) : eater);
    }
  }

  /** Whether the hay that its people are told of clears: then it is given no other. */
  private boolean keepsToIt(Eater eater) {
    boolean isCleared = !eater.group().isEmpty() && eater.may().containsAll(eater.now());
    return isCleared && isTold(eater);
  }

  private boolean isTold(Eater eater) {
    return eater.horses().stream().noneMatch(free::contains)
        && eater.members().stream().allMatch(m -> m.fed().verdict().equals("clears"));
  }

  /** Cleared lots in a form that all members can chew; who cannot chew hay keeps what it is fed. */
  private Set<String> may(
      SortedSet<String> groups, SortedSet<String> now, List<Eater.Member> members) {
    Set<String> lots = clearedHay.computeIfAbsent(groups, this::clearedHay);
    if (!standings.dietLimited(groups).isEmpty()) {
      lots = only(lots, lot -> now.contains(lot) ? !isOver(members) : isDietCleared(members, lot));
    }
    List<String> toothless =
        members.stream()
            .map(Eater.Member::horse)
            .filter(h -> h.has(DENTAL))
            .map(Horse::id)
            .toList();
    if (!toothless.isEmpty()) {
      lots = only(lots, lot -> now.contains(lot) || isChewable(lot));
      notes.add(
          String.join(", ", toothless)
              + ": no other hay is given where it cannot chew its form; bags of chopped forage or"
              + " cubes are not shared out");
    }
    return lots;
  }

  private static Set<String> only(Set<String> lots, Predicate<String> keep) {
    return lots.stream().filter(keep).collect(Collectors.toUnmodifiableSet());
  }

  private Set<String> clearedHay(SortedSet<String> groups) {
    return only(standings.cleared(context.larder().lots().keySet(), groups), this::isHay);
  }

  /** Whether the whole diet of a member is over a limit with what it is fed. */
  private static boolean isOver(List<Eater.Member> members) {
    return members.stream()
        .map(m -> m.fed().verdict())
        .anyMatch(v -> v.equals("exceeds") || v.equals("borderline-over"));
  }

  /** Whether all members' whole diets clear with as much dry matter of another lot. */
  private boolean isDietCleared(List<Eater.Member> members, String lot) {
    Foodstuff food = context.larder().find(lot, "").orElseThrow();
    return members.stream()
        .allMatch(
            m ->
                context
                    .adviser()
                    .withHay(m.horse(), m.replaced(), lot, m.kgDm() * 100 / food.dryMatter().best())
                    .verdicts()
                    .stream()
                    .allMatch(v -> v.word().isCleared()));
  }

  private boolean isChewable(String lot) {
    return context
        .larder()
        .find(lot, "")
        .map(Foodstuff::form)
        .filter(context.remedy().chewableForms()::contains)
        .isPresent();
  }

  /**
   * Whether all members eat a mixture that clears as a whole though a part of it would not clear
   * alone: moving them onto one part could undo it, so that each part stays as it is. So does each
   * part of a mixture that people are told of.
   */
  private boolean isMixedAndClears(Eater eater) {
    boolean isOver = !eater.may().containsAll(eater.now());
    boolean isToldMixed = eater.now().size() > 1 && isTold(eater);
    return !eater.limited().isEmpty()
        && (isOver || isToldMixed)
        && eater.members().stream()
            .map(Eater.Member::fed)
            .allMatch(
                d ->
                    d.verdict().equals("clears")
                        && d.portions().stream().filter(PortionLine::asForage).count() > 1);
  }

  /** One lot of a mixture, to be kept as it is or only where it can be. */
  private static Eater ofMixture(Eater eater, String lot, boolean isKept) {
    SortedSet<String> only = new TreeSet<>(List.of(lot));
    return new Eater(
        eater.id() + " " + lot,
        eater.groups(),
        eater.limited(),
        eater.group(),
        eater.rank(),
        eater.members().stream().map(m -> m.only(lot)).filter(m -> m.kgDm() > 0).toList(),
        isKept ? only : eater.may(),
        only,
        isKept);
  }

  /** Kg as fed per day that the horses of each client eat of each lot. */
  static Map<String, SortedMap<String, Double>> useByClient(List<Eater> eaters) {
    Map<String, SortedMap<String, Double>> use = new TreeMap<>();
    for (Eater eater : eaters) {
      SortedMap<String, Double> own = use.computeIfAbsent(eater.client(), c -> new TreeMap<>());
      eater
          .members()
          .forEach(m -> m.kgByLot().forEach((lot, kg) -> own.merge(lot, kg, Double::sum)));
    }
    return use;
  }
}
