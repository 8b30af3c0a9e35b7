package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem.MinimumCostFlowProblemImpl;
import org.jgrapht.alg.interfaces.MinimumCostFlowAlgorithm.MinimumCostFlow;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * A network with whole supplies, capacities and costs, and its cheapest flow.
 *
 * <p>Whole numbers stay whole in the library's doubles, so that the flow is exact; nodes and arcs
 * are handed over in the order of their making, so that it repeats.
 */
final class MinCostFlow {
  /** The library takes costs from 1e9 on for infinite. */
  static final long MOST_COST = 999_999_999;

  private final List<Integer> supplies = new ArrayList<>();
  private final List<Arc> arcs = new ArrayList<>();

  private record Arc(int from, int to, int capacity, int cost) {}

  /** Adds a node that gives (above 0), takes (below 0) or passes on (0) and says its place. */
  int node(long supply) {
    supplies.add(Math.toIntExact(supply));
    return supplies.size() - 1;
  }

  /** Adds the only arc between two nodes and says its place. */
  int arc(int from, int to, long capacity, long cost) {
    if (cost < 0 || cost > MOST_COST) {
      throw new IllegalArgumentException("a cost must be in [0, " + MOST_COST + "]: " + cost);
    }
    arcs.add(new Arc(from, to, Math.toIntExact(capacity), (int) cost));
    return arcs.size() - 1;
  }

  int nodes() {
    return supplies.size();
  }

  int arcs() {
    return arcs.size();
  }

  /**
   * The flow on each arc, in the order of the arcs.
   *
   * @throws IllegalArgumentException if supplies do not add up or cannot be carried
   */
  long[] solve() {
    Graph<Integer, Integer> graph = new SimpleDirectedWeightedGraph<>(null, null);
    for (int node = 0; node < supplies.size(); node++) {
      graph.addVertex(node);
    }
    for (int i = 0; i < arcs.size(); i++) {
      Arc arc = arcs.get(i);
      if (!graph.addEdge(arc.from, arc.to, i)) {
        throw new IllegalStateException("two arcs from " + arc.from + " to " + arc.to);
      }
      graph.setEdgeWeight(i, arc.cost);
    }
    MinimumCostFlow<Integer> flow =
        new CapacityScalingMinimumCostFlow<Integer, Integer>()
            .getMinimumCostFlow(
                new MinimumCostFlowProblemImpl<>(
                    graph, supplies::get, arc -> arcs.get(arc).capacity));
    long[] found = new long[arcs.size()];
    for (int i = 0; i < found.length; i++) {
      found[i] = Math.round(flow.getFlow(i));
    }
    return found;
  }
}
