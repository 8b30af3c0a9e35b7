package rickyard.core.season;

import rickyard.core.quantity.Cites;

/** Student's t distribution with a whole number of degrees of freedom, by its finite series. */
public final class StudentT {
  private StudentT() {}

  /**
   * The chance that {@code |T|} is at least {@code |t|}: {@code 1 − A(t|ν)}, with {@code θ =
   * atan(t/√ν)} and {@code A = sin θ (1 + cos²θ/2 + 1·3 cos⁴θ/(2·4) + … to cos^(ν−2))} for an even
   * ν, {@code A = 2/π (θ + sin θ (cos θ + 2 cos³θ/3 + … to cos^(ν−2)))} for an odd one.
   *
   * <p>Absolute error below 1e-12.
   *
   * @param t any number; infinities give 0
   * @param degreesOfFreedom ν, at least 1
   * @return in [0, 1]
   */
  @Cites(source = "abramowitz-stegun-1964", locator = "26.7.3 and 26.7.4")
  public static double twoSided(double t, int degreesOfFreedom) {
    if (Double.isNaN(t) || degreesOfFreedom < 1) {
      throw new IllegalArgumentException("t of " + degreesOfFreedom + " degrees, was " + t);
    }
    double angle = StrictMath.atan(Math.abs(t) / StrictMath.sqrt(degreesOfFreedom));
    double within =
        degreesOfFreedom % 2 == 0
            ? StrictMath.sin(angle) * series(angle, degreesOfFreedom, 0)
            : 2
                / StrictMath.PI
                * (angle + StrictMath.sin(angle) * series(angle, degreesOfFreedom, 1));
    return Math.min(1, Math.max(0, 1 - within));
  }

  /** The sum of the powers of the cosine from {@code power} to ν − 2, each with its factor. */
  private static double series(double angle, int degreesOfFreedom, int power) {
    double cosine = StrictMath.cos(angle);
    double term = power == 0 ? 1 : cosine;
    double sum = 0;
    for (int k = power; k <= degreesOfFreedom - 2; k += 2) {
      sum += term;
      term *= cosine * cosine * (k + 1) / (k + 2);
    }
    return sum;
  }
}
