package rickyard.expectations;

import java.util.function.DoubleUnaryOperator;
import rickyard.core.quantity.Normal;

/**
 * What a rule does to hays of one kind, by integration over the true content: the figure that a
 * test gives is normal about the truth with the standard uncertainty.
 *
 * @param clears share of all lots
 * @param borderline share of all lots, on either side of the limit, not cleared
 * @param exceeds share of all lots
 * @param under share of all lots that are truly at most 10 %
 * @param underThatClear of those, the share that clears
 * @param clearedOver10 of the cleared lots, the share that is truly over 10 %
 * @param clearedOver12 of the cleared lots, the share that is truly over 12 %
 */
record Expectation(
    double clears,
    double borderline,
    double exceeds,
    double under,
    double underThatClear,
    double clearedOver10,
    double clearedOver12) {

  private static final int STEPS = 4000;

  static Expectation of(HayKind hay, Rule rule) {
    return of(hay, rule, rule.u());
  }

  /**
   * The same with tests that miss by more, or less, than the rule takes into account.
   *
   * @param trueU standard deviation of the tests' errors
   */
  static Expectation of(HayKind hay, Rule rule, double trueU) {
    DoubleUnaryOperator clear = t -> Normal.cdf((rule.clearsTo() - t) / trueU);
    DoubleUnaryOperator exceed = t -> Normal.cdf((t - rule.exceedsFrom()) / trueU);
    double all = integral(hay, t -> 1, hay.low(), hay.high());
    double cleared = integral(hay, clear, hay.low(), hay.high());
    double exceeded = integral(hay, exceed, hay.low(), hay.high());
    double under = integral(hay, t -> 1, hay.low(), 10);
    double underCleared = integral(hay, clear, hay.low(), 10);
    double over12 = integral(hay, clear, Math.max(12, hay.low()), hay.high());
    return new Expectation(
        cleared / all,
        1 - (cleared + exceeded) / all,
        exceeded / all,
        under / all,
        underCleared / under,
        (cleared - underCleared) / cleared,
        over12 / cleared);
  }

  /** The share of lots whose figure lies over {@code from} and at most {@code to}. */
  static double read(HayKind hay, double u, double from, double to) {
    DoubleUnaryOperator inside = t -> Normal.cdf((to - t) / u) - Normal.cdf((from - t) / u);
    return integral(hay, inside, hay.low(), hay.high())
        / integral(hay, t -> 1, hay.low(), hay.high());
  }

  /** Simpson's rule on the density times a function. */
  private static double integral(HayKind hay, DoubleUnaryOperator f, double from, double to) {
    if (to <= from) {
      return 0;
    }
    double h = (to - from) / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double t = i == STEPS ? to : from + i * h;
      int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * hay.density(t) * f.applyAsDouble(t);
    }
    return sum * h / 3;
  }
}
