package rickyard.second;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * One number against one limit by the rule printed on every page: {@code clears} y ≤ L − w, {@code
 * borderline-under} up to L, {@code borderline-over} below L + w, {@code exceeds} from there on;
 * {@code w = z(risk) u}.
 *
 * @param word of the six
 * @param pOver chance of being over, of what is open above at least that of its lower end; empty
 *     where the evidence does not tell
 */
record Ruling(String word, OptionalDouble pOver) {
  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** The same relative tie with a limit that the design states for all comparisons. */
  private static final double TIE = 1e-9;

  /**
   * @param value in the limit's unit; a censored one counts with its upper end under a maximum
   * @param limit the maximum
   * @param risk accepted chance of being wrong when it says clears; NaN for no guard band
   */
  static Ruling underMaximum(Optional<Num> value, double limit, double risk) {
    if (value.isEmpty()) {
      return new Ruling("cannot-judge", OptionalDouble.empty());
    }
    Num v = value.get();
    double w = Double.isNaN(risk) ? 0 : v.u() * NORMAL.inverseCumulativeProbability(1 - risk);
    if (!v.isBounded()) {
      boolean condemns = notBelow(v.lower(), limit + w) && v.lower() > limit;
      OptionalDouble atLeast = chance(v.lower() - limit, v.u());
      return new Ruling(
          condemns ? "exceeds" : "cannot-judge",
          atLeast.getAsDouble() < 0.5 ? OptionalDouble.empty() : atLeast);
    }
    double y = v.upper();
    return new Ruling(zone(y, limit, w), chance(y - limit, v.u()));
  }

  private static String zone(double y, double limit, double w) {
    if (notBelow(limit - w, y)) {
      return "clears";
    }
    if (notBelow(limit, y)) {
      return "borderline-under";
    }
    return notBelow(y, limit + w) ? "exceeds" : "borderline-over";
  }

  private static boolean notBelow(double a, double b) {
    return b - a <= TIE * Math.max(Math.abs(a), Math.abs(b));
  }

  private static OptionalDouble chance(double beyond, double u) {
    double none = beyond > 0 ? 1 : 0;
    return OptionalDouble.of(u == 0 ? none : NORMAL.cumulativeProbability(beyond / u));
  }
}
