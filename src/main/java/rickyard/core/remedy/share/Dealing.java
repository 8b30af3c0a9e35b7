package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Deals what a class got out to its members, one after the other by id: the hay that they are fed
 * now, then their client's, then that for anybody, each from the cheapest pile on; the last go
 * short. So a horse changes hay as seldom as can be, and the answer is one of its own.
 */
final class Dealing {
  private final ShareProblem problem;
  private final List<NeedClass> classes;
  private final ShareNetwork.Solved solved;
  private final Map<ShareNetwork.Hub, Stack> hubs = new HashMap<>();
  private final List<Allotment> allotments = new ArrayList<>();
  private final SortedMap<String, Long> shortGrams = new TreeMap<>();

  Dealing(ShareProblem problem, List<NeedClass> classes, ShareNetwork.Solved solved) {
    this.problem = problem;
    this.classes = classes;
    this.solved = solved;
  }

  Sharing deal() {
    for (int c = 0; c < classes.size(); c++) {
      dealTo(c);
    }
    Map<String, Integer> order = new HashMap<>();
    problem.needs().forEach(n -> order.put(n.id(), order.size()));
    allotments.sort(Comparator.comparingInt(a -> order.getOrDefault(a.need(), 0)));
    return new Sharing(allotments, shortGrams);
  }

  private void dealTo(int c) {
    NeedClass of = classes.get(c);
    Stack stack = new Stack();
    SortedMap<Integer, Long> direct = solved.direct(c);
    order(direct, of).forEach(pile -> stack.add(pile, direct.getOrDefault(pile, 0L)));
    hubs.computeIfAbsent(solved.hub(c), this::fill).move(solved.viaHub(c), stack);
    for (Need need : of.needs()) {
      long wanted = Units.needed(need);
      for (Stack.Part part : stack.take(wanted)) {
        Pile pile = problem.piles().get(part.pile());
        allotments.add(
            new Allotment(need.id(), pile.lot(), pile.client(), part.units() * Units.GRAMS));
        wanted -= part.units();
      }
      if (wanted > 0) {
        shortGrams.put(need.id(), wanted * Units.GRAMS);
      }
    }
  }

  /** What is fed now first, then the client's, then by price and place. */
  private List<Integer> order(SortedMap<Integer, Long> direct, NeedClass of) {
    return direct.keySet().stream()
        .sorted(
            Comparator.comparing((Integer pile) -> !of.now().get(pile))
                .thenComparing(pile -> !of.own().get(pile))
                .thenComparing(this::price)
                .thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  private double price(int pile) {
    return problem.piles().get(pile).pricePerTonneDm().orElse(Double.MAX_VALUE);
  }

  private Stack fill(ShareNetwork.Hub hub) {
    SortedMap<Integer, Long> from = solved.fromHub(hub);
    Stack stack = new Stack();
    from.keySet().stream()
        .sorted(Comparator.comparing(this::price).thenComparing(Comparator.naturalOrder()))
        .forEach(pile -> stack.add(pile, from.getOrDefault(pile, 0L)));
    return stack;
  }

  /** Amounts of piles in the order in which they are dealt. */
  private static final class Stack {
    private final List<Part> parts = new ArrayList<>();

    /** An amount of one pile. */
    private record Part(int pile, long units) {}

    void add(int pile, long units) {
      if (units > 0) {
        parts.add(new Part(pile, units));
      }
    }

    /** Takes that much from the front, or all there is. */
    List<Part> take(long wanted) {
      List<Part> taken = new ArrayList<>();
      long left = wanted;
      Iterator<Part> all = List.copyOf(parts).iterator();
      while (left > 0 && all.hasNext()) {
        Part part = all.next();
        long units = Math.min(left, part.units);
        taken.add(new Part(part.pile, units));
        left -= units;
        if (units == part.units) {
          parts.remove(0);
        } else {
          parts.set(0, new Part(part.pile, part.units - units));
        }
      }
      return taken;
    }

    void move(long units, Stack to) {
      take(units).forEach(part -> to.add(part.pile, part.units));
    }
  }
}
