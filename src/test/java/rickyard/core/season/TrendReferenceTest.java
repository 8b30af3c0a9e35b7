package rickyard.core.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** Lines through values over time against a numeric library's regressions. */
class TrendReferenceTest {
  private static final long SEED = 20_261_127L;

  private static List<TimePoint> points(Random random, int n) {
    List<TimePoint> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(
          new TimePoint(
              10 * i + random.nextInt(9), 8 + random.nextGaussian(), 0.3 + random.nextDouble()));
    }
    return points;
  }

  /** Rows divided by u turn the weighted line into a plain regression without its own constant. */
  @Test
  void theWeightedLineIsThatOfTheScaledRegression() {
    Random random = new Random(SEED);
    for (int round = 0; round < 100; round++) {
      List<TimePoint> points = points(random, 3 + random.nextInt(12));
      double[][] x = new double[points.size()][];
      double[] y = new double[points.size()];
      for (int i = 0; i < y.length; i++) {
        TimePoint p = points.get(i);
        x[i] = new double[] {1 / p.u(), p.x() / p.u()};
        y[i] = p.y() / p.u();
      }
      OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
      library.setNoIntercept(true);
      library.newSampleData(y, x);
      // The library scales errors by its residuals; our u is known beforehand.
      double u =
          library.estimateRegressionParametersStandardErrors()[1]
              / library.estimateRegressionStandardError();
      Trend found = Trend.weighted(points);
      String where = "seed " + SEED + ", round " + round;
      assertEquals(library.estimateRegressionParameters()[1], found.slope(), 1e-10, where);
      assertEquals(u, found.u(), 1e-10, where);
    }
  }

  @Test
  void theLineWithScatterIsTheLibrarysSimpleRegression() {
    Random random = new Random(SEED);
    for (int round = 0; round < 100; round++) {
      SimpleRegression library = new SimpleRegression();
      List<TimePoint> points = points(random, 3 + random.nextInt(8));
      points.forEach(p -> library.addData(p.x(), p.y()));
      Trend found = Trend.fromScatter(points);
      String where = "seed " + SEED + ", round " + round;
      assertEquals(library.getSlope(), found.slope(), 1e-10, where);
      assertEquals(library.getSlopeStdErr(), found.u(), 1e-10, where);
      assertEquals(library.getSignificance(), found.chanceFromScatter(), 1e-9, where);
    }
  }

  @Test
  void aLineTakesTwoTimesAndItsScatterThreePoints() {
    List<TimePoint> sameTime = List.of(new TimePoint(1, 8, 1), new TimePoint(1, 9, 1));
    assertThrows(IllegalArgumentException.class, () -> Trend.weighted(sameTime));
    assertThrows(IllegalArgumentException.class, () -> Trend.fromScatter(sameTime));
    assertThrows(IllegalArgumentException.class, () -> new TimePoint(1, 8, 0));
  }
}
