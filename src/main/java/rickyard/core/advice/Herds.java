package rickyard.core.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Suitability;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationItem;
import rickyard.core.nutrition.Replacement;
import rickyard.core.nutrition.Requirements;

/** Finds the herd of a horse and judges what it shares. */
final class Herds {
  private static final Set<String> OPEN_MEASURES = Set.of("ad-lib", "bale");
  private static final double ANY_KG = 10;
  private static final int MOST_NAMED = 5;

  private final AdviceContext context;
  private final Feeding feeding;
  private final DietJudge judge;

  Herds(AdviceContext context, Feeding feeding, DietJudge judge) {
    this.context = context;
    this.feeding = feeding;
    this.judge = judge;
  }

  /** The herd of a horse; empty if it shares no bale. A herd is known within its client only. */
  Optional<Herd> find(Horse horse) {
    if (horse.herd().isEmpty()) {
      return Optional.empty();
    }
    List<Horse> members =
        context.horses().values().stream()
            .filter(h -> h.clientId().equals(horse.clientId()) && h.herd().equals(horse.herd()))
            .toList();
    SortedMap<String, SortedSet<String>> groups = new TreeMap<>();
    members.forEach(m -> groups.put(m.name(), Grouping.of(m, context.conditions()).groups()));
    SortedMap<String, Foodstuff> bales = bales(members);
    List<BaleVerdict> verdicts = new ArrayList<>();
    bales.forEach((bale, food) -> add(horse, bale, food, groups, verdicts));
    List<String> unread =
        context.problems().keySet().stream()
            .filter(id -> !context.horses().containsKey(id))
            .toList();
    return Optional.of(
        new Herd(horse.herd(), groups, new TreeSet<>(bales.keySet()), verdicts, unread));
  }

  /**
   * The shared forages as they will be fed: those given ad lib or by the bale to any horse of the
   * herd; where no ration says so, every forage of all of them.
   */
  private SortedMap<String, Foodstuff> bales(List<Horse> members) {
    SortedMap<String, Foodstuff> open = new TreeMap<>();
    SortedMap<String, Foodstuff> all = new TreeMap<>();
    for (Horse member : members) {
      List<String> ignored = new ArrayList<>();
      Optional<Ration> ration = feeding.inForce(member);
      List<Portion> now = feeding.weigh(member, ration, ignored);
      ComingRation coming = feeding.coming(member, now, ignored);
      Set<String> shared = shared(ration, coming);
      for (Portion portion : coming.portions()) {
        Foodstuff food = portion.food();
        if (portion.asForage() && food.isForage()) {
          all.put(food.key(), food);
          if (shared.contains(food.id())) {
            open.put(food.key(), food);
          }
        }
      }
    }
    return open.isEmpty() ? all : open;
  }

  private static Set<String> shared(Optional<Ration> ration, ComingRation coming) {
    Set<String> shared = new HashSet<>();
    ration.stream()
        .flatMap(r -> r.items().stream())
        .filter(i -> i.asForage() && OPEN_MEASURES.contains(i.unit()))
        .map(RationItem::item)
        .forEach(shared::add);
    for (Replacement replacement : coming.replacements()) {
      if (shared.contains(replacement.delivery().replaces().orElse(""))) {
        shared.add(replacement.delivery().lotId());
      }
    }
    return shared;
  }

  private void add(
      Horse horse,
      String bale,
      Foodstuff food,
      SortedMap<String, SortedSet<String>> members,
      List<BaleVerdict> verdicts) {
    SortedSet<String> groups = new TreeSet<>();
    members.values().forEach(groups::addAll);
    for (Verdict verdict : verdicts(horse, food, groups)) {
      String group = verdict.limit().group();
      boolean isForAll = group.equals(Limit.ALL);
      if (isForAll ? !verdict.word().isCleared() : groups.contains(group)) {
        verdicts.add(new BaleVerdict(bale, isForAll ? List.of() : names(members, group), verdict));
      }
    }
  }

  private static List<String> names(SortedMap<String, SortedSet<String>> members, String group) {
    return members.entrySet().stream()
        .filter(m -> m.getValue().contains(group))
        .map(m -> m.getKey())
        .toList();
  }

  /** A lot's own verdicts; what has none is judged as if it were fed alone. */
  private List<Verdict> verdicts(Horse horse, Foodstuff food, SortedSet<String> groups) {
    List<Verdict> own = context.lotVerdicts().get(food.id());
    if (own != null && !own.isEmpty()) {
      return own.stream().filter(v -> !v.isSilent()).toList();
    }
    Diet alone =
        Diet.evaluate(
            horse,
            List.of(Portion.of(food, ANY_KG, true)),
            Requirements.of(horse, context.asOf(), context.standards()),
            context.standards());
    return judge.judge(alone, new HorseGroups(groups, List.of(), new TreeSet<>()));
  }

  /** Lots in reach that clear for every group of the herd, the first few by name. */
  List<String> otherBales(Herd herd, SortedSet<String> inReach) {
    return inReach.stream()
        .filter(lot -> !herd.bales().contains(lot))
        .filter(lot -> context.larder().findLot(lot).isPresent())
        .filter(lot -> suits(lot, herd.groups()))
        .limit(MOST_NAMED)
        .toList();
  }

  private boolean suits(String lot, SortedSet<String> groups) {
    List<Verdict> verdicts = context.lotVerdicts().get(lot);
    return verdicts != null && Suitability.of(verdicts).suits().containsAll(groups);
  }
}
