package rickyard.core.forage;

import java.io.Serializable;
import rickyard.core.quantity.Cites;

/**
 * What the uncertainty of one figure is made of, kept so that advice can say what another sampling
 * or method would change.
 *
 * @param lab the laboratory's part by the method used, k = 1, in the figure's unit
 * @param labWet the laboratory's part if it were wet chemistry
 * @param core standard deviation between cores
 * @param cores cores taken, at least 1
 * @param rest rounding and conversion by dry matter
 */
public record ErrorBudget(double lab, double labWet, double core, int cores, double rest)
    implements Serializable {

  public ErrorBudget {
    if (!(lab >= 0 && labWet >= 0 && core >= 0 && rest >= 0) || cores < 1) {
      throw new IllegalArgumentException("an error budget's parts are >= 0 and cores >= 1");
    }
  }

  /** Standard uncertainty: {@code u² = u_lab² + s_core²/n + u_rest²}. */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, independent terms")
  public double u() {
    return root(lab, core / StrictMath.sqrt(cores), rest);
  }

  /** Standard uncertainty with {@code n} cores, by the method used or by wet chemistry. */
  public double u(int n, boolean wet) {
    return root(wet ? Math.min(lab, labWet) : lab, core / StrictMath.sqrt(n), rest);
  }

  /** The budget of a sum of two figures of the same sample whose errors are correlated by r. */
  public ErrorBudget plus(ErrorBudget other, double r) {
    return new ErrorBudget(
        sum(lab, other.lab, r),
        sum(labWet, other.labWet, r),
        sum(core, other.core, r),
        Math.min(cores, other.cores),
        sum(rest, other.rest, r));
  }

  private static double sum(double a, double b, double r) {
    return StrictMath.sqrt(Math.max(0, a * a + b * b + 2 * r * a * b));
  }

  private static double root(double a, double b, double c) {
    return StrictMath.sqrt(a * a + b * b + c * c);
  }
}
