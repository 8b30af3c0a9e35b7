package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers needs into classes, in the order of the problem. */
final class NeedClasses {
  private final List<Pile> piles;
  private final Map<Set<String>, BitSet> openByLots = new HashMap<>();
  private final Map<String, List<Integer>> ownByClient = new HashMap<>();

  private record Key(int rank, boolean limited, BitSet open, BitSet own, BitSet now) {}

  private NeedClasses(List<Pile> piles) {
    this.piles = piles;
    for (int i = 0; i < piles.size(); i++) {
      if (!piles.get(i).client().isEmpty()) {
        ownByClient.computeIfAbsent(piles.get(i).client(), c -> new ArrayList<>()).add(i);
      }
    }
  }

  /**
   * The classes.
   *
   * @param withNow whether what is fed now tells needs apart
   */
  static List<NeedClass> of(ShareProblem problem, boolean withNow) {
    NeedClasses classes = new NeedClasses(problem.piles());
    Map<Key, List<Need>> members = new LinkedHashMap<>();
    for (Need need : problem.needs()) {
      members.computeIfAbsent(classes.key(need, withNow), k -> new ArrayList<>()).add(need);
    }
    List<NeedClass> found = new ArrayList<>();
    members.forEach(
        (key, needs) ->
            found.add(new NeedClass(key.rank, key.limited, key.open, key.own, key.now, needs)));
    return found;
  }

  private Key key(Need need, boolean withNow) {
    BitSet open = openByLots.computeIfAbsent(need.may(), this::open);
    BitSet own = new BitSet();
    for (int i : ownByClient.getOrDefault(need.client(), List.of())) {
      own.set(i, piles.get(i).isFor(need));
    }
    BitSet now = new BitSet();
    if (withNow) {
      open.stream().filter(i -> need.now().contains(piles.get(i).lot())).forEach(now::set);
      own.stream().filter(i -> need.now().contains(piles.get(i).lot())).forEach(now::set);
    }
    return new Key(need.rank(), need.limited(), open, own, now);
  }

  private BitSet open(Set<String> lots) {
    BitSet open = new BitSet();
    for (int i = 0; i < piles.size(); i++) {
      open.set(i, piles.get(i).client().isEmpty() && lots.contains(piles.get(i).lot()));
    }
    return open;
  }
}
