package rickyard.core.forage;

import rickyard.core.quantity.Cites;

/**
 * What washing sugar out of hay would have to do: used to say how far a hope reaches, never to
 * clear a lot. Only the sugar is taken to be lost, so the same loss of mass makes the content fall
 * by less.
 */
public final class Soaking {
  private Soaking() {}

  /**
   * The content after a share of the sugar's mass is gone: {@code c' = c (1 − f) / (1 − c f)}.
   *
   * @param percent content before, % of dry matter, in [0, 100]
   * @param loss share of the mass of the sugar that is lost, in [0, 1]
   * @return % of what dry matter is left
   */
  @Cites(source = "definition", locator = "mass balance: only the sugar is lost")
  public static double after(double percent, double loss) {
    requireShare(percent / 100);
    requireShare(loss);
    double c = percent / 100;
    double left = 1 - c * loss;
    return left <= 0 ? 0 : 100 * c * (1 - loss) / left;
  }

  /**
   * The share of the sugar's mass that would have to go: {@code f = (c − T) / (c (1 − T))}.
   *
   * @param percent content before, % of dry matter, in (0, 100]
   * @param target content wanted, % of dry matter, in [0, 100), at most {@code percent}
   * @return in [0, 1]
   */
  @Cites(source = "definition", locator = "mass balance: only the sugar is lost")
  public static double lossNeeded(double percent, double target) {
    requireShare(percent / 100);
    if (!(target >= 0 && target < 100 && target <= percent)) {
      throw new IllegalArgumentException("target must be in [0, content], was " + target);
    }
    double c = percent / 100;
    double t = target / 100;
    return c == 0 ? 0 : (c - t) / (c * (1 - t));
  }

  private static void requireShare(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share must be in [0, 1], was " + share);
    }
  }
}
