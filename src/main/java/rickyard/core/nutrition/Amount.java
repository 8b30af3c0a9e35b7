package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A figure of a diet with its bounds: an amount per day or per meal, or a ratio.
 *
 * @param best sum of the best values of what is known
 * @param lower the same with one-sided terms at their lower end
 * @param upper the same with one-sided terms at their upper end; infinite where something is
 *     unknown
 * @param u standard uncertainty (k = 1)
 * @param ceiling what is held against a maximum tolerable level: reported terms at their upper
 *     bound (two u), assumed terms at their best value, open ends at theirs
 * @param origin reported, part-assumed or assumed
 * @param missing keys of the items whose content is unknown, sorted; empty if complete
 */
public record Amount(
    double best,
    double lower,
    double upper,
    double u,
    double ceiling,
    Origin origin,
    List<String> missing) {

  public Amount {
    requireNonNull(origin, "origin");
    missing = List.copyOf(missing);
    if (!(Double.isFinite(best)
        && Double.isFinite(lower)
        && Double.isFinite(u)
        && u >= 0
        && lower <= upper)) {
      throw new IllegalArgumentException("not an amount: " + best + ", " + lower + ", " + upper);
    }
  }

  /** An exact amount. */
  static Amount exact(double value) {
    return new Amount(value, value, value, 0, value, Origin.REPORTED, List.of());
  }

  /** Lower bound: two standard uncertainties below, at least 0. */
  public double low() {
    return Math.max(0, lower - 2 * u);
  }

  /** Upper bound: two standard uncertainties above; infinite where something is unknown. */
  public double high() {
    return upper + 2 * u;
  }

  public boolean isComplete() {
    return missing.isEmpty();
  }

  /** The same divided by a positive number, for example by kg of body weight. */
  public Amount per(double divisor) {
    return new Amount(
        best / divisor,
        lower / divisor,
        upper / divisor,
        u / divisor,
        ceiling / divisor,
        origin,
        missing);
  }
}
