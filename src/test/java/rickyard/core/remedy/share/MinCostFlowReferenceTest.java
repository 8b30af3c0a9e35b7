package rickyard.core.remedy.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Transport problems whose least cost others printed; sources and status stand in the file. */
class MinCostFlowReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/transport-problems.csv", useHeadersInDisplayName = true)
  void agreesWithThePrintedOptimum(
      String supplies, String demands, String costs, long expected, String source) {
    long[] supply = numbers(supplies);
    long[] demand = numbers(demands);
    MinCostFlow flow = new MinCostFlow();
    int[] from = nodes(flow, supply, 1);
    int[] to = nodes(flow, demand, -1);
    long[] cost = numbers(costs);
    List<Long> ofArc = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      for (int j = 0; j < to.length; j++) {
        ofArc.add(cost[i * to.length + j]);
        flow.arc(from[i], to[j], Math.min(supply[i], demand[j]), cost[i * to.length + j]);
      }
    }

    long[] found = flow.solve();

    long total = 0;
    for (int arc = 0; arc < found.length; arc++) {
      total += found[arc] * ofArc.get(arc);
    }
    assertEquals(expected, total, source);
  }

  @Test
  void aCostThatTheLibraryTakesForInfiniteIsRefused() {
    MinCostFlow flow = new MinCostFlow();
    int a = flow.node(1);
    int b = flow.node(-1);

    assertThrows(IllegalArgumentException.class, () -> flow.arc(a, b, 1, 1_000_000_000));
  }

  private static int[] nodes(MinCostFlow flow, long[] amounts, int sign) {
    int[] nodes = new int[amounts.length];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = flow.node(sign * amounts[i]);
    }
    return nodes;
  }

  private static long[] numbers(String text) {
    return Arrays.stream(text.split(" ", -1)).mapToLong(Long::parseLong).toArray();
  }
}
