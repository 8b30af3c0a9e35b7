package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Proves a sharing without any solver: a flow is the cheapest where no cycle of exchanges (more of
 * one pile here, less of it there, and so on) is worth anything. Every horse and pile stand alone.
 */
final class NoBetter {
  private static final long WITHOUT = 1_000_000_000_000L;

  private final List<long[]> exchanges = new ArrayList<>();
  private final int nodes;

  NoBetter(ShareProblem problem, Sharing sharing) {
    Map<String, Integer> needAt = new HashMap<>();
    problem.needs().forEach(n -> needAt.put(n.id(), needAt.size()));
    Map<List<String>, Integer> pileAt = new HashMap<>();
    problem
        .piles()
        .forEach(p -> pileAt.put(List.of(p.lot(), p.client()), needAt.size() + pileAt.size()));
    nodes = needAt.size() + pileAt.size() + 1;
    int store = nodes - 1;
    Map<Long, Boolean> used = new HashMap<>();
    long[] given = new long[nodes];
    for (Allotment a : sharing.allotments()) {
      int pile = pileAt.get(List.of(a.lot(), a.client()));
      used.put((long) needAt.get(a.need()) * nodes + pile, true);
      given[pile] += a.grams() / Units.GRAMS;
    }
    int last = problem.needs().stream().mapToInt(Need::rank).max().orElse(0);
    for (Need need : problem.needs()) {
      int at = needAt.get(need.id());
      long lack = (last - need.rank() + 1) * WITHOUT;
      exchanges.add(new long[] {at, store, lack});
      if (sharing.shortGrams().containsKey(need.id())) {
        exchanges.add(new long[] {store, at, -lack});
      }
      for (Pile pile : problem.piles()) {
        if (need.may().contains(pile.lot())
            && (pile.client().isEmpty() || pile.client().equals(need.client()))) {
          int to = pileAt.get(List.of(pile.lot(), pile.client()));
          long cost = Math.round(Ledgered.unitCost(problem, need, pile));
          exchanges.add(new long[] {at, to, cost});
          if (used.containsKey((long) at * nodes + to)) {
            exchanges.add(new long[] {to, at, -cost});
          }
        }
      }
    }
    for (Pile pile : problem.piles()) {
      int at = pileAt.get(List.of(pile.lot(), pile.client()));
      if (given[at] < Units.there(pile)) {
        exchanges.add(new long[] {at, store, 0});
      }
      if (given[at] > 0) {
        exchanges.add(new long[] {store, at, 0});
      }
    }
  }

  /** Whether no cycle of exchanges has a negative cost (Bellman and Ford). */
  boolean holds() {
    long[] distance = new long[nodes];
    for (int round = 0; round <= nodes; round++) {
      boolean isSettled = true;
      for (long[] e : exchanges) {
        long by = distance[(int) e[0]] + e[2];
        if (by < distance[(int) e[1]]) {
          distance[(int) e[1]] = by;
          isSettled = false;
        }
      }
      if (isSettled) {
        return true;
      }
    }
    return false;
  }
}
