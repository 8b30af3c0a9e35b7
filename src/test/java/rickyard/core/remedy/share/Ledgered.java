package rickyard.core.remedy.share;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a sharing comes to, counted from its rows and not by the code that made it. */
record Ledgered(SortedMap<Integer, Long> shortByRank, double cost) {

  /** The cost of a unit that a need takes from a pile, as {@link Sharer} says it in words. */
  static double unitCost(ShareProblem problem, Need need, Pile pile) {
    double dearest =
        problem.piles().stream()
            .filter(p -> p.pricePerTonneDm().isPresent())
            .mapToDouble(p -> p.pricePerTonneDm().getAsDouble())
            .max()
            .orElse(0);
    double perMoney = 100;
    double price = Math.rint(pile.pricePerTonneDm().orElse(dearest) * perMoney);
    double factor = problem.piles().size() + 1;
    boolean stays = need.now().contains(pile.lot());
    if (need.limited()) {
      return price * factor + (stays ? 0 : 1);
    }
    return stays ? 0 : (Math.rint(dearest * perMoney) + 1 + price) * factor;
  }

  static Ledgered of(ShareProblem problem, Sharing sharing) {
    Map<String, Need> needs = new HashMap<>();
    problem.needs().forEach(n -> needs.put(n.id(), n));
    Map<List<String>, Pile> piles = new HashMap<>();
    problem.piles().forEach(p -> piles.put(List.of(p.lot(), p.client()), p));
    SortedMap<Integer, Long> without = new TreeMap<>();
    problem.needs().forEach(n -> without.put(n.rank(), 0L));
    problem.needs().forEach(n -> without.merge(n.rank(), Units.needed(n), Long::sum));
    double cost = 0;
    for (Allotment a : sharing.allotments()) {
      Need need = needs.get(a.need());
      cost += unitCost(problem, need, piles.get(List.of(a.lot(), a.client()))) * a.grams() / 100;
      without.merge(need.rank(), -a.grams() / 100, Long::sum);
    }
    without.values().removeIf(units -> units == 0);
    return new Ledgered(without, cost);
  }
}
