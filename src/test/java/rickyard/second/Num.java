package rickyard.second;

import java.util.List;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A number with what rounding and censoring allow, the ends that a verdict takes, its standard
 * uncertainty and what it rests on.
 *
 * @param best best value
 * @param low lower end allowed by rounding and censoring
 * @param high upper end
 * @param lower what counts against a minimum: the best value, of a one-sided figure its lower end
 * @param upper what counts against a maximum; infinite where nothing bounds it
 * @param u standard uncertainty, k = 1
 * @param origin reported, assumed or part-assumed; empty where it rests on nothing, as none does
 */
record Num(
    double best, double low, double high, double lower, double upper, double u, String origin) {
  static final String REPORTED = "reported";
  static final String ASSUMED = "assumed";
  static final String PART = "part-assumed";

  static Num plain(double best, double halfWidth, double u, String origin) {
    return new Num(best, Math.max(0, best - halfWidth), best + halfWidth, best, best, u, origin);
  }

  static Num atMost(double x, double u, String origin) {
    return new Num(x, 0, x, 0, x, u, origin);
  }

  static Num atLeast(double x, double u, String origin) {
    double open = Double.POSITIVE_INFINITY;
    return new Num(x, x, open, x, open, u, origin);
  }

  /** Below a limit of detection: half of it, anywhere between none and all of it. */
  static Num below(double x, double u, String origin) {
    return new Num(x / 2, 0, x, 0, x, u, origin);
  }

  boolean isBounded() {
    return upper < Double.POSITIVE_INFINITY;
  }

  Num times(double factor) {
    return new Num(
        best * factor,
        low * factor,
        high * factor,
        lower * factor,
        upper * factor,
        u * factor,
        origin);
  }

  Num withU(double newU) {
    return new Num(best, low, high, lower, upper, newU, origin);
  }

  static String both(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a + b;
    }
    return a.equals(b) ? a : PART;
  }

  /** {@code g'x} with {@code u = √(g'Vg)}; every weight at least 0. */
  static Num sum(RealVector g, List<Num> x, RealMatrix covariance) {
    double[] at = new double[5];
    String origin = "";
    for (int i = 0; i < x.size(); i++) {
      double w = g.getEntry(i);
      Num n = x.get(i);
      double[] ends = {n.best, n.low, n.high, n.lower, n.upper};
      for (int k = 0; k < at.length; k++) {
        at[k] += w == 0 ? 0 : w * ends[k];
      }
      origin = both(origin, n.origin);
    }
    double variance = g.dotProduct(covariance.operate(g));
    return new Num(at[0], at[1], at[2], at[3], at[4], Math.sqrt(Math.max(0, variance)), origin);
  }
}
