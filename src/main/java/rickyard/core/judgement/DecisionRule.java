package rickyard.core.judgement;

import java.util.OptionalDouble;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Normal;

/**
 * The non-binary decision rule with guard band.
 *
 * <p>With limit L, value y, standard uncertainty u and {@code w = z(risk) · u}, under a maximum:
 * {@code clears} y ≤ L − w; {@code borderline-under} L − w &lt; y ≤ L; {@code borderline-over} L
 * &lt; y &lt; L + w; {@code exceeds} y ≥ L + w (and y &gt; L). Under a minimum the same with the
 * sides exchanged. Of a censored value the end that is worse for the horse counts. A value that is
 * open above exceeds a maximum when its lower end does, and otherwise cannot be judged; its chance
 * of being over is at least that of its lower end, which is said from even on.
 */
public final class DecisionRule {
  /** Two numbers closer than this share of the larger are equal: absorbs binary rounding only. */
  static final double TIE = 1e-9;

  /** From this chance on a lower end alone tells that the limit is more likely passed than not. */
  private static final double EVEN = 0.5;

  private DecisionRule() {}

  /**
   * The rule in a sentence that stands on every output.
   *
   * @return plain words, no markup
   */
  public static String words() {
    return "Chance of being over the limit, from this test alone: Φ((y − L)/u). Guard band"
        + " w = z(risk) · u. clears: y ≤ L − w; borderline-under: L − w < y ≤ L (not cleared);"
        + " borderline-over: L < y < L + w (not cleared); exceeds: y ≥ L + w; cannot-judge: the"
        + " evidence does not bound it (not cleared).";
  }

  /**
   * The zone of a value.
   *
   * @param value in any unit of the limit's dimension, on the limit's basis
   * @param limit the limit
   * @throws rickyard.core.quantity.UnlikeQuantitiesException if unit or basis do not fit the limit
   */
  @Cites(source = "ilac-g8-2019", locator = "pages 8-9, non-binary statement with guard band")
  public static Finding find(Measured value, Limit limit) {
    Measured v = limit.unit().of(value);
    double w = limit.guardFactor() * v.u();
    return limit.bound() == Bound.MAX ? underMaximum(v, limit, w) : overMinimum(v, limit, w);
  }

  private static Finding underMaximum(Measured v, Limit limit, double w) {
    double max = limit.value();
    if (v.isBoundedAbove()) {
      return new Finding(
          zone(v.upper() - max, w, max), chance(v.upper() - max, v.u(), max), w, v.upper());
    }
    Word word = zone(v.lower() - max, w, max) == Word.EXCEEDS ? Word.EXCEEDS : Word.CANNOT_JUDGE;
    OptionalDouble atLeast = chance(v.lower() - max, v.u(), max);
    boolean isTelling = atLeast.getAsDouble() >= EVEN;
    return new Finding(word, isTelling ? atLeast : OptionalDouble.empty(), w, v.lower());
  }

  /** A value of which only an upper end is known does not show that a minimum is missed. */
  private static Finding overMinimum(Measured v, Limit limit, double w) {
    double min = limit.value();
    Word word = zone(min - v.lower(), w, min);
    if (!word.isCleared() && v.isOneSided() && !isAbove(min, v.upper())) {
      return new Finding(Word.CANNOT_JUDGE, OptionalDouble.empty(), w, v.lower());
    }
    return new Finding(word, chance(min - v.lower(), v.u(), min), w, v.lower());
  }

  /**
   * The zone of a distance beyond the limit.
   *
   * @param beyond how far on the wrong side, negative within the limit
   */
  private static Word zone(double beyond, double w, double limit) {
    double tie = TIE * Math.max(1e-12, Math.max(limit, Math.abs(beyond)));
    if (beyond <= -w + tie) {
      return Word.CLEARS;
    }
    if (beyond <= tie) {
      return Word.BORDERLINE_UNDER;
    }
    return beyond >= w - tie ? Word.EXCEEDS : Word.BORDERLINE_OVER;
  }

  /**
   * Chance of being beyond the limit: {@code P = Φ((y − L)/u)}, no prior; without uncertainty 0 up
   * to the limit and 1 beyond it.
   */
  @Cites(
      source = "jcgm106-2012",
      locator = "7.3, one-sided tolerance interval, normal distribution")
  static OptionalDouble chance(double beyond, double u, double limit) {
    double tie = TIE * Math.max(limit, Math.abs(beyond));
    if (u <= 0) {
      return OptionalDouble.of(beyond <= tie ? 0 : 1);
    }
    return OptionalDouble.of(Normal.cdf(beyond / u));
  }

  private static boolean isAbove(double a, double b) {
    return a - b > TIE * Math.max(Math.abs(a), Math.abs(b));
  }
}
