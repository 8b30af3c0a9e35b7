package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The optimum of the optimiser's model against a second statement of it and another library's
 * solver: seeded random supports of one to four items.
 */
class InnerModelTest {
  private static final long SEED = 77_001;
  private static final int CASES = Integer.getInteger("rickyard.supports", 700);
  private static final double RELATIVE = 1e-6;

  @Test
  void optimaAreTheSameAndWhatIsInfeasibleIsSoForBoth() {
    List<String> wrong = new ArrayList<>();
    TreeMap<String, Integer> counts = new TreeMap<>();
    for (int i = 0; i < CASES; i++) {
      RandomSupport support = new RandomSupport(SEED + i);
      Optional<double[]> first = new MixModel(support.request(), support.spec()).solve();
      SecondModel second = new SecondModel(support.request(), support.spec());
      String name = "seed " + (SEED + i) + " ";
      if (first.isEmpty()) {
        counts.merge("infeasible " + support.spec().free().size(), 1, Integer::sum);
        double excess = second.leastExcess();
        if (excess <= SecondModel.INFEASIBLE) {
          wrong.add(name + "said to be infeasible, least excess " + excess);
        }
        continue;
      }
      counts.merge("feasible " + support.spec().free().size(), 1, Integer::sum);
      Optional<SecondModel.Optimum> optimum = second.solve();
      double[] x = first.get();
      if (optimum.isEmpty()) {
        wrong.add(
            name
                + "infeasible for the second solver, least excess "
                + second.leastExcess()
                + ", at the first's point "
                + second.worst(x)
                + " "
                + second.outside(x));
        continue;
      }
      double value = second.value(x);
      double best = optimum.get().value();
      if (Math.abs(value - best) > RELATIVE * Math.max(1, Math.abs(best))) {
        wrong.add(name + value + ", second solver " + best);
      }
      if (second.worst(x) > 1e-8 || second.outside(x) > 1e-7) {
        wrong.add(name + "breaks a row by " + second.worst(x) + " " + second.outside(x));
      }
    }
    assertEquals(List.of(), wrong, () -> wrong.size() + " of " + CASES);
    int feasible =
        counts.entrySet().stream()
            .filter(e -> e.getKey().startsWith("feasible"))
            .mapToInt(java.util.Map.Entry::getValue)
            .sum();
    assertTrue(feasible >= CASES / 4 && counts.getOrDefault("feasible 4", 0) > 20, "" + counts);
  }
}
