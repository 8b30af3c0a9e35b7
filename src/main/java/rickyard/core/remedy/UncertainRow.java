package rickyard.core.remedy;

import rickyard.core.quantity.Cites;

/**
 * A limit of a mix with its guard band, {@code f(x) = k + Σ a·x + z·√(v + Σ (s·x)²) ≤ 0}: convex in
 * the amounts x.
 */
final class UncertainRow {
  /** Closer to the limit than this share of it counts as met: absorbs rounding of the optimiser. */
  static final double TOLERANCE = 1e-9;

  private static final int THIRDS = 60;

  private final double constant;
  private final double[] slopes;
  private final double fixedVariance;
  private final double[] spreads;
  private final double z;
  private final double scale;

  UncertainRow(
      double constant,
      double[] slopes,
      double fixedVariance,
      double[] spreads,
      double z,
      double scale) {
    this.constant = constant;
    this.slopes = slopes.clone();
    this.fixedVariance = fixedVariance;
    this.spreads = spreads.clone();
    this.z = z;
    this.scale = Math.max(1e-12, scale);
  }

  /** How far beyond the limit, as a share of it; at most {@link #TOLERANCE} is met. */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, independent terms: squares add up")
  double excess(double[] x) {
    double sum = constant;
    for (int i = 0; i < slopes.length; i++) {
      sum += slopes[i] * x[i];
    }
    return (sum + z * spread(x)) / scale;
  }

  /** Whether any amounts break it; not where the fixed part and every item alone keep it. */
  boolean canBind() {
    boolean binds = constant + z * Math.sqrt(fixedVariance) > 0;
    for (int i = 0; i < slopes.length; i++) {
      binds |= slopes[i] + z * spreads[i] > 0;
    }
    return binds;
  }

  /**
   * The least excess on the straight line between two points; the row is convex, so that thirds
   * close in on it.
   */
  double leastExcessBetween(double[] from, double[] to) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < THIRDS; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (excess(between(from, to, a)) <= excess(between(from, to, b))) {
        high = b;
      } else {
        low = a;
      }
    }
    return Math.min(
        excess(between(from, to, (low + high) / 2)), Math.min(excess(from), excess(to)));
  }

  private static double[] between(double[] from, double[] to, double share) {
    double[] x = new double[from.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = from[i] + share * (to[i] - from[i]);
    }
    return x;
  }

  private double spread(double[] x) {
    double variance = fixedVariance;
    for (int i = 0; i < spreads.length; i++) {
      double part = spreads[i] * x[i];
      variance += part * part;
    }
    return Math.sqrt(variance);
  }

  /** The row without its uncertainty: holds wherever the row itself holds. */
  void addRelaxedTo(LinearProgram program) {
    program.row(slopes, Double.NEGATIVE_INFINITY, -constant);
  }

  /** The tangent of the row at a point: holds wherever the row holds, and cuts the point off. */
  void addTangentTo(LinearProgram program, double[] at) {
    double spread = spread(at);
    if (z == 0 || spread == 0) {
      return;
    }
    double[] cut = slopes.clone();
    double atPoint = spread;
    for (int i = 0; i < cut.length; i++) {
      double gradient = spreads[i] * spreads[i] * at[i] / spread;
      cut[i] += z * gradient;
      atPoint -= gradient * at[i];
    }
    program.row(cut, Double.NEGATIVE_INFINITY, -constant - z * atPoint);
  }
}
