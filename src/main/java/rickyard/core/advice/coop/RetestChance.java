package rickyard.core.advice.coop;

import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Normal;

/**
 * What a second test of a lot may say, from the first alone.
 *
 * <p>The first test says y with standard uncertainty u; nothing else is known of the true content,
 * which then is normal around y with u. A second test with standard uncertainty v, of new cores,
 * says y' = y + d·√(u² + v²), with d standard normal. Both together say ŷ = y + (u²/√(u² + v²))·d
 * with uncertainty √(1/(1/u² + 1/v²)): the mean of two independent results, weighted by their
 * precision. Two tests that differ by more than 2·√(u² + v²) are a question and clear nothing.
 */
final class RetestChance {
  private static final double AGREE = 2;

  private RetestChance() {}

  /**
   * Standard uncertainty of both tests together: {@code √(1/(1/u² + 1/v²))}.
   *
   * @param u of the first test, above 0
   * @param v of the second, above 0
   */
  @Cites(source = "jcgm100-2008", locator = "weighted mean of independent results")
  static double combinedU(double u, double v) {
    return u * v / StrictMath.hypot(u, v);
  }

  /**
   * Chance that both tests together are at most a threshold and agree: {@code Φ(min(2, k)) − Φ(−2)}
   * with {@code k = (T − y)·√(u² + v²)/u²}; 0 where k is below −2.
   *
   * @param y what the first test says
   * @param u its standard uncertainty, above 0
   * @param v standard uncertainty of the second test, above 0
   * @param threshold T, the largest mean that clears: limit less guard band of both together
   */
  @Cites(source = "own-derivation", locator = "docs/methods.md, the chance of a retest")
  static double atMost(double y, double u, double v, double threshold) {
    double k = (threshold - y) * StrictMath.hypot(u, v) / (u * u);
    return k <= -AGREE ? 0 : Normal.cdf(Math.min(AGREE, k)) - Normal.cdf(-AGREE);
  }
}
