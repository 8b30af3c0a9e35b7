package rickyard.core.season;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import rickyard.core.quantity.Cites;

/**
 * A straight line through values over time.
 *
 * @param slope change of the value per unit of time
 * @param u standard uncertainty of the slope
 * @param points how many, at least 2
 */
public record Trend(double slope, double u, int points) {

  /**
   * The line weighted by the values' own uncertainties: with {@code w = 1/u²} and weighted means
   * x̄, ȳ, {@code b = Σw(x − x̄)(y − ȳ)/Σw(x − x̄)²} and {@code u(b) = 1/√Σw(x − x̄)²}. The errors
   * are taken as independent; that tests of one laboratory share some makes u(b) the larger.
   *
   * @param points at two different times at least
   */
  @Cites(source = "bevington-1969", locator = "ch. 6, weighted least-squares fit to a line")
  public static Trend weighted(List<TimePoint> points) {
    return line(points, p -> 1 / (p.u() * p.u()), sxx -> 1 / StrictMath.sqrt(sxx));
  }

  /**
   * The line that takes its uncertainty from the scatter about it: {@code u(b) = √(Σr²/(n − 2)) /
   * √Σ(x − x̄)²}, r being what the line leaves. Years differ by more than a laboratory errs.
   *
   * @param given at least three, at two different times at least
   */
  @Cites(source = "nist-handbook", locator = "simple linear regression: slope and its error")
  public static Trend fromScatter(List<TimePoint> given) {
    List<TimePoint> points = sorted(given);
    if (points.size() < 3) {
      throw new IllegalArgumentException("scatter about a line takes three points");
    }
    Trend line = line(points, p -> 1, sxx -> 1 / StrictMath.sqrt(sxx));
    double xMean = mean(points, TimePoint::x);
    double yMean = mean(points, TimePoint::y);
    double left =
        sum(points, p -> square(p.y() - yMean - line.slope * (p.x() - xMean)))
            / (points.size() - 2);
    return new Trend(line.slope, StrictMath.sqrt(left) * line.u, points.size());
  }

  private static Trend line(
      List<TimePoint> given, ToDoubleFunction<TimePoint> weight, DoubleUnaryOperator error) {
    List<TimePoint> points = sorted(given);
    double total = sum(points, weight);
    double xMean = sum(points, p -> weight.applyAsDouble(p) * p.x()) / total;
    double yMean = sum(points, p -> weight.applyAsDouble(p) * p.y()) / total;
    double sxx = sum(points, p -> weight.applyAsDouble(p) * square(p.x() - xMean));
    double sxy = sum(points, p -> weight.applyAsDouble(p) * (p.x() - xMean) * (p.y() - yMean));
    if (!(sxx > 0)) {
      throw new IllegalArgumentException("a line takes values of two different times");
    }
    return new Trend(sxy / sxx, error.applyAsDouble(sxx), points.size());
  }

  /** The chance of a slope at least this far from 0 if there were none, by Student's t. */
  public double chanceFromScatter() {
    return slope == 0 ? 1 : StudentT.twoSided(slope / u, points - 2);
  }

  /** Sums in one order, so that the order of the points changes not even the last digit. */
  private static List<TimePoint> sorted(List<TimePoint> points) {
    return points.stream()
        .sorted(Comparator.comparingDouble(TimePoint::x).thenComparingDouble(TimePoint::y))
        .toList();
  }

  private static double mean(List<TimePoint> points, ToDoubleFunction<TimePoint> of) {
    return sum(points, of) / points.size();
  }

  private static double sum(List<TimePoint> points, ToDoubleFunction<TimePoint> of) {
    double sum = 0;
    for (TimePoint point : points) {
      sum += of.applyAsDouble(point);
    }
    return sum;
  }

  private static double square(double value) {
    return value * value;
  }
}
