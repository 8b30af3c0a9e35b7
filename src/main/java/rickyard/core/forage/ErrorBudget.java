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
 * @param standing standard uncertainty that several tests reach together, the parts above being
 *     those of the most certain one; 0 for a single test
 */
public record ErrorBudget(
    double lab, double labWet, double core, int cores, double rest, double standing)
    implements Serializable {

  public ErrorBudget {
    if (!(lab >= 0 && labWet >= 0 && core >= 0 && rest >= 0 && standing >= 0) || cores < 1) {
      throw new IllegalArgumentException("an error budget's parts are >= 0 and cores >= 1");
    }
  }

  /** The budget of a single test. */
  public ErrorBudget(double lab, double labWet, double core, int cores, double rest) {
    this(lab, labWet, core, cores, rest, 0);
  }

  /** Whether several tests stand behind the figure. */
  public boolean isOfSeveral() {
    return standing > 0;
  }

  /** Standard uncertainty: {@code u² = u_lab² + s_core²/n + u_rest²}, or what several reach. */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, independent terms")
  public double u() {
    return isOfSeveral() ? standing : fresh(cores, false);
  }

  /**
   * Standard uncertainty after a new sample of {@code n} cores, by the method used or by wet
   * chemistry: of the new test alone, or, where several tests stand already, of all together by
   * {@code 1/u² = 1/u_standing² + 1/u_new²}.
   */
  @Cites(source = "jcgm100-2008", locator = "weighted mean of independent results")
  public double u(int n, boolean wet) {
    double fresh = fresh(n, wet);
    return isOfSeveral() ? 1 / StrictMath.hypot(1 / standing, 1 / fresh) : fresh;
  }

  /** The sampling part: {@code s_core/√n}. */
  public double sampling() {
    return core / StrictMath.sqrt(cores);
  }

  private double fresh(int n, boolean wet) {
    return root(wet ? Math.min(lab, labWet) : lab, core / StrictMath.sqrt(n), rest);
  }

  /** The same parts, with the uncertainty that several tests reach together. */
  public ErrorBudget withStanding(double together) {
    return new ErrorBudget(lab, labWet, core, cores, rest, together);
  }

  /** The budget of a sum of two figures of the same sample whose errors are correlated by r. */
  public ErrorBudget plus(ErrorBudget other, double r) {
    return new ErrorBudget(
        sum(lab, other.lab, r),
        sum(labWet, other.labWet, r),
        sum(core, other.core, r),
        Math.min(cores, other.cores),
        sum(rest, other.rest, r),
        isOfSeveral() || other.isOfSeveral() ? sum(u(), other.u(), r) : 0);
  }

  private static double sum(double a, double b, double r) {
    return StrictMath.sqrt(Math.max(0, a * a + b * b + 2 * r * a * b));
  }

  private static double root(double a, double b, double c) {
    return StrictMath.sqrt(a * a + b * b + c * c);
  }
}
