package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Classes of needs, piles and the arcs between them.
 *
 * <p>Piles for anybody are reached through a hub that all classes with the same reach share, so
 * that arcs grow with the number of classes and of piles, not with their product. A class has arcs
 * of its own to what it is fed now and to what its client has.
 */
final class ShareNetwork {
  private final MinCostFlow flow = new MinCostFlow();
  private final List<NeedClass> classes;
  private final List<Pile> piles;
  private final List<Standing> made = new ArrayList<>();
  private final Map<Hub, Integer> hubNodes = new LinkedHashMap<>();
  private final Map<Hub, SortedMap<Integer, Integer>> hubArcs = new LinkedHashMap<>();

  /** Where one class stands in the network: arcs by pile, then to its hub and to nowhere. */
  record Standing(SortedMap<Integer, Integer> direct, Hub hub, int viaHub, int none) {}

  /** Classes that reach the same piles at the same cost. */
  record Hub(boolean limited, BitSet open) {}

  /** What an arc from a class to nowhere leads to. */
  record Nowhere(Map<Integer, Integer> nodes, Map<Integer, Long> costs) {}

  private ShareNetwork(ShareProblem problem, List<NeedClass> classes) {
    this.classes = classes;
    this.piles = problem.piles();
  }

  /**
   * The network whose cheapest flow leaves least short, the lowest rank first.
   *
   * <p>Any costs that fall with the rank do: what can be carried to the sources of a network is a
   * polymatroid, on which serving the first rank to the full, then the next, is never regretted.
   */
  static ShareNetwork ofCoverage(ShareProblem problem, List<NeedClass> classes) {
    ShareNetwork network = new ShareNetwork(problem, classes);
    long total = classes.stream().mapToLong(NeedClass::units).sum();
    int store = network.flow.node(-total);
    Map<Integer, Integer> nodes = new HashMap<>();
    Map<Integer, Long> costs = new HashMap<>();
    List<Integer> ranks = classes.stream().map(NeedClass::rank).distinct().sorted().toList();
    for (int i = 0; i < ranks.size(); i++) {
      nodes.put(ranks.get(i), store);
      costs.put(ranks.get(i), (long) ranks.size() - i);
    }
    network.build(store, new Nowhere(nodes, costs), (pile, limited, stays) -> 0);
    return network;
  }

  /** The network whose cheapest flow costs least, with what each rank goes without as given. */
  static ShareNetwork ofCost(
      ShareProblem problem, List<NeedClass> classes, SortedMap<Integer, Long> shortByRank) {
    ShareNetwork network = new ShareNetwork(problem, classes);
    long total = classes.stream().mapToLong(NeedClass::units).sum();
    long without = shortByRank.values().stream().mapToLong(Long::longValue).sum();
    int store = network.flow.node(without - total);
    Map<Integer, Integer> nodes = new HashMap<>();
    shortByRank.forEach((rank, units) -> nodes.put(rank, network.flow.node(-units)));
    Prices prices = new Prices(problem.piles());
    network.build(store, new Nowhere(nodes, Map.of()), prices::cost);
    return network;
  }

  /** The cost of a unit. */
  interface Cost {
    long of(Pile pile, boolean limited, boolean stays);
  }

  private void build(int store, Nowhere nowhere, Cost cost) {
    List<Integer> pileNodes = new ArrayList<>();
    for (Pile pile : piles) {
      int node = flow.node(0);
      pileNodes.add(node);
      flow.arc(node, store, Units.there(pile), 0);
    }
    for (NeedClass of : classes) {
      int node = flow.node(of.units());
      SortedMap<Integer, Integer> direct = new TreeMap<>();
      of.direct().stream()
          .forEach(
              i ->
                  direct.put(
                      i,
                      flow.arc(
                          node,
                          pileNodes.get(i),
                          of.units(),
                          cost.of(piles.get(i), of.limited(), of.now().get(i)))));
      Hub hub = new Hub(of.limited(), of.open());
      int hubNode = hubNodes.computeIfAbsent(hub, h -> hub(h, pileNodes, cost));
      int via = flow.arc(node, hubNode, of.units(), 0);
      int none =
          flow.arc(
              node,
              nowhere.nodes.getOrDefault(of.rank(), store),
              nowhere.nodes.containsKey(of.rank()) ? of.units() : 0,
              nowhere.costs.getOrDefault(of.rank(), 0L));
      made.add(new Standing(direct, hub, via, none));
    }
  }

  private int hub(Hub hub, List<Integer> pileNodes, Cost cost) {
    int node = flow.node(0);
    SortedMap<Integer, Integer> arcs = new TreeMap<>();
    hub.open.stream()
        .forEach(
            i ->
                arcs.put(
                    i,
                    flow.arc(
                        node,
                        pileNodes.get(i),
                        Units.there(piles.get(i)),
                        cost.of(piles.get(i), hub.limited, false))));
    hubArcs.put(hub, arcs);
    return node;
  }

  /** Solves it. */
  Solved solve() {
    return new Solved(flow.solve());
  }

  /** A flow, read by class and hub. */
  final class Solved {
    private final long[] units;

    private Solved(long[] units) {
      this.units = units;
    }

    /** What each rank goes without; ranks that lack nothing are not in it. */
    SortedMap<Integer, Long> shortByRank() {
      SortedMap<Integer, Long> found = new TreeMap<>();
      for (int c = 0; c < classes.size(); c++) {
        long none = units[made.get(c).none()];
        if (none > 0) {
          found.merge(classes.get(c).rank(), none, Long::sum);
        }
      }
      return found;
    }

    SortedMap<Integer, Long> direct(int c) {
      return nonZero(made.get(c).direct());
    }

    Hub hub(int c) {
      return made.get(c).hub();
    }

    long viaHub(int c) {
      return units[made.get(c).viaHub()];
    }

    /** What a hub takes from each pile. */
    SortedMap<Integer, Long> fromHub(Hub hub) {
      return nonZero(hubArcs.getOrDefault(hub, new TreeMap<>()));
    }

    private SortedMap<Integer, Long> nonZero(SortedMap<Integer, Integer> arcs) {
      SortedMap<Integer, Long> found = new TreeMap<>();
      arcs.forEach(
          (pile, arc) -> {
            if (units[arc] > 0) {
              found.put(pile, units[arc]);
            }
          });
      return found;
    }
  }

  int arcs() {
    return flow.arcs();
  }
}
