package rickyard.core.season;

import java.util.List;
import rickyard.core.quantity.Cites;

/**
 * Differences within pairs, taken together: the paired t test.
 *
 * @param pairs how many, at least 2
 * @param above in how many pairs the difference is above 0
 * @param below in how many it is below 0
 * @param mean mean difference d̄
 * @param sd standard deviation of the differences, {@code s = √(Σ(d − d̄)²/(n − 1))}
 * @param u standard uncertainty of the mean, {@code s/√n}
 * @param t {@code d̄/u}; 0 where every difference is 0, infinite where all are alike and not 0
 * @param chance of a mean at least this far from 0 if there were no difference, two-sided
 */
public record PairedDifference(
    int pairs, int above, int below, double mean, double sd, double u, double t, double chance) {

  /** Degrees of freedom. */
  public int degreesOfFreedom() {
    return pairs - 1;
  }

  /**
   * Takes differences together: {@code t = d̄ √n / s} with n − 1 degrees of freedom. Their order
   * changes nothing.
   *
   * @param differences one for each pair, at least two
   */
  @Cites(source = "nist-handbook", locator = "paired t: mean, s/√n, n - 1 degrees of freedom")
  public static PairedDifference of(List<Double> differences) {
    List<Double> sorted = differences.stream().sorted().toList();
    int n = sorted.size();
    if (n < 2) {
      throw new IllegalArgumentException("a spread takes two pairs, were " + n);
    }
    double mean = sum(sorted) / n;
    double sd = StrictMath.sqrt(sum(sorted.stream().map(d -> square(d - mean)).toList()) / (n - 1));
    double u = sd / StrictMath.sqrt(n);
    double t = mean == 0 ? 0 : mean / u;
    return new PairedDifference(
        n,
        (int) sorted.stream().filter(d -> d > 0).count(),
        (int) sorted.stream().filter(d -> d < 0).count(),
        mean,
        sd,
        u,
        t,
        StudentT.twoSided(t, n - 1));
  }

  private static double sum(List<Double> values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private static double square(double value) {
    return value * value;
  }
}
