package rickyard.core.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The paired t test and its distribution against published values and a numeric library. */
class PairedDifferenceReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/student-t.csv", useHeadersInDisplayName = true)
  void theDistributionHasThePublishedCriticalValues(
      double t, int degrees, double chance, double tolerance, String source, String locator) {
    assertEquals(chance, StudentT.twoSided(t, degrees), tolerance, () -> source + ", " + locator);
    assertEquals(chance, StudentT.twoSided(-t, degrees), tolerance, "both sides");
  }

  @Test
  void theDistributionAgreesWithTheLibraryForEveryNumberOfPairs() {
    for (int degrees = 1; degrees <= 60; degrees++) {
      TDistribution library = new TDistribution(null, degrees);
      for (double t : new double[] {0, 0.01, 0.5, 1, 2, 3, 6, 20}) {
        assertEquals(
            2 * library.cumulativeProbability(-t),
            StudentT.twoSided(t, degrees),
            1e-10,
            t + " with " + degrees);
      }
    }
    assertEquals(0, StudentT.twoSided(Double.POSITIVE_INFINITY, 4), 1e-12);
  }

  /** Gosset's example of ten sleepers under two drugs: reference/paired-t.csv. */
  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/paired-t.csv", useHeadersInDisplayName = true)
  void agreesWithThePublishedExample(
      String differences,
      double mean,
      double sd,
      double t,
      int degrees,
      double chance,
      String source,
      String locator) {
    List<Double> given = new ArrayList<>();
    for (String each : differences.split(" ", -1)) {
      given.add(Double.valueOf(each));
    }
    PairedDifference found = PairedDifference.of(given);
    assertEquals(mean, found.mean(), 0.005, () -> source + ", " + locator);
    assertEquals(sd, found.sd(), 0.005);
    assertEquals(t, found.t(), 0.0005);
    assertEquals(degrees, found.degreesOfFreedom());
    assertEquals(chance, found.chance(), 0.00001);
  }

  @Test
  void agreesWithTheLibraryOnRandomPairs() {
    long seed = 20_261_126L;
    Random random = new Random(seed);
    for (int round = 0; round < 200; round++) {
      int n = 2 + random.nextInt(20);
      double[] a = new double[n];
      double[] b = new double[n];
      List<Double> differences = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        a[i] = 5 + 10 * random.nextDouble();
        b[i] = a[i] + random.nextGaussian() - 0.4;
        differences.add(a[i] - b[i]);
      }
      String where = "seed " + seed + ", round " + round;
      PairedDifference found = PairedDifference.of(differences);
      assertEquals(StatUtils.meanDifference(a, b), found.mean(), 1e-12, where);
      assertEquals(
          Math.sqrt(StatUtils.varianceDifference(a, b, found.mean())), found.sd(), 1e-12, where);
      assertEquals(new TTest().pairedT(a, b), found.t(), 1e-9 * Math.abs(found.t()), where);
      assertEquals(new TTest().pairedTTest(a, b), found.chance(), 1e-9, where);
    }
  }
}
