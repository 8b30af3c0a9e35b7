package rickyard.core.advice;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.remedy.Candidate;
import rickyard.core.remedy.Serving;

/**
 * What one horse is fed and can be fed: as portions for the diet code, as servings for the search.
 */
final class Manger {
  private final Horse horse;
  private final Reach reach;
  private final List<Portion> then;
  private final SortedMap<String, Reach.Item> items;
  private final Set<String> inReach;

  /**
   * @param now what it is fed today
   * @param then what it is to be fed
   */
  Manger(Horse horse, List<Portion> now, List<Portion> then, Reach reach) {
    this.horse = horse;
    this.reach = reach;
    this.then = List.copyOf(then);
    this.items = new TreeMap<>(reach.of(horse));
    this.inReach = new TreeSet<>(items.keySet());
    then.forEach(p -> items.computeIfAbsent(p.food().key(), k -> reach.fed(p.food(), horse)));
    now.forEach(p -> items.computeIfAbsent(p.food().key(), k -> reach.fed(p.food(), horse)));
  }

  /** Everything in reach and everything that is fed. */
  List<Candidate> candidates() {
    return items.entrySet().stream()
        .filter(e -> inReach.contains(e.getKey()))
        .map(e -> e.getValue().candidate())
        .toList();
  }

  List<Serving> servings(List<Portion> portions) {
    return portions.stream().map(p -> serving(p, item(p.food().key()).candidate())).toList();
  }

  /** The same with what is at the yard as the stock of each. */
  List<Serving> servingsAtHand(List<Portion> portions) {
    return portions.stream()
        .map(p -> serving(p, reach.atHand(p.food(), horse).candidate()))
        .toList();
  }

  private static Serving serving(Portion portion, Candidate candidate) {
    return new Serving(candidate, portion.kgAsFed(), portion.asForage(), portion.meals());
  }

  List<Portion> portions(List<Serving> ration) {
    return ration.stream().filter(a -> a.kg() > 0).map(this::portion).toList();
  }

  private Portion portion(Serving serving) {
    String key = Reach.key(serving.item());
    return new Portion(
        item(key).food(), serving.kg(), 0, serving.fedAsForage(), serving.meals(), prepared(key));
  }

  /** An item that is soaked or steamed today stays so. */
  private String prepared(String key) {
    return then.stream()
        .filter(p -> p.food().key().equals(key))
        .map(Portion::prepared)
        .findFirst()
        .orElse(Portion.DRY);
  }

  private Reach.Item item(String key) {
    Reach.Item item = items.get(key);
    if (item == null) {
      throw new IllegalStateException("not in reach and not fed: " + key);
    }
    return item;
  }
}
