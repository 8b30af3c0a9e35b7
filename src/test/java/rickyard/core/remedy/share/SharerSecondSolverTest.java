package rickyard.core.remedy.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SortedMap;
import org.junit.jupiter.api.Test;

/** The sharing is as good as what another library finds for the plain linear program. */
class SharerSecondSolverTest {
  private static final int CASES = 240;
  private static final double RELATIVE = 1e-6;

  @Test
  void coverageAndCostEqualThoseOfTheSecondSolver() {
    int scarce = 0;
    for (int seed = 0; seed < CASES; seed++) {
      ShareProblem problem = Offices.random(seed, 3 + seed % 11, 2 + seed % 7);
      Ledgered ours = Ledgered.of(problem, Sharer.share(problem));
      PlainProgram other = new PlainProgram(problem, false);
      scarce += ours.shortByRank().isEmpty() ? 0 : 1;

      other.shortByRank().forEach((rank, units) -> assertRank(problem, ours, rank, units));
      double cost = other.cost();
      assertEquals(cost, ours.cost(), RELATIVE * Math.max(1, cost), "cost, seed " + seed);
    }
    assertTrue(scarce > CASES / 4, "cases in which something is short: " + scarce);
  }

  private static void assertRank(ShareProblem problem, Ledgered ours, int rank, double units) {
    double total = problem.needs().stream().mapToLong(Units::needed).sum();
    assertEquals(
        units,
        ours.shortByRank().getOrDefault(rank, 0L),
        RELATIVE * total,
        () -> "rank " + rank + " of " + problem);
  }

  @Test
  void whatTheCoverageAloneSaysIsWhatTheSharingLeaves() {
    for (int seed = 1000; seed < 1100; seed++) {
      ShareProblem problem = Offices.random(seed, 12, 8);
      SortedMap<Integer, Long> units = Ledgered.of(problem, Sharer.share(problem)).shortByRank();
      units.replaceAll((rank, u) -> u * Units.GRAMS);
      assertEquals(units, Sharer.shortByRank(problem), "seed " + seed);
    }
  }
}
