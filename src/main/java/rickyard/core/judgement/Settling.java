package rickyard.core.judgement;

import java.util.OptionalInt;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Measured;

/**
 * What would bring a borderline value outside the guard band: computed from what its uncertainty is
 * made of, for a new sample that gives the same figure again.
 *
 * <p>With distance {@code d = |y − L|} a test settles when {@code z · u(n, method) ≤ d}. Cores make
 * only the sampling part smaller, so some values no number of cores can settle, and a value over
 * the limit no test can clear: that is said too.
 */
final class Settling {
  private final Limit limit;
  private final double y;
  private final ErrorBudget budget;
  private final double factor;
  private final JudgementSettings settings;

  /**
   * Prepares the advice.
   *
   * @param factor from the budget's unit to the limit's unit
   */
  Settling(
      Limit limit, Measured value, ErrorBudget budget, double factor, JudgementSettings settings) {
    this.limit = limit;
    this.y = limit.bound() == Bound.MAX ? value.upper() : value.lower();
    this.budget = budget;
    this.factor = factor;
    this.settings = settings;
  }

  /** The advice in plain words. */
  String words() {
    return (isWithin() ? cleared() : exceeded()) + (budget.isOfSeveral() ? TOGETHER : "");
  }

  private static final String TOGETHER = " (the new test taken together with those at hand)";

  private boolean isWithin() {
    return limit.bound() == Bound.MAX ? y <= limit.value() : y >= limit.value();
  }

  private boolean isWetBetter() {
    return budget.labWet() < budget.lab();
  }

  private String cleared() {
    OptionalInt same = cores(false);
    OptionalInt wet = isWetBetter() ? cores(true) : OptionalInt.empty();
    String again = " would clear if it gives " + text(y) + " again";
    if (same.isPresent() && wet.isPresent()) {
      return "a new sample of "
          + count(same.getAsInt())
          + " by the same method, or of "
          + count(wet.getAsInt())
          + " by wet chemistry,"
          + again;
    }
    if (same.isPresent()) {
      return "a new sample of " + count(same.getAsInt()) + " by the same method" + again;
    }
    if (wet.isPresent()) {
      return "wet chemistry on a new sample of "
          + count(wet.getAsInt())
          + again
          + "; by the same method no number of cores up to "
          + settings.mostCores()
          + " does: with "
          + settings.adviceCores()
          + " it clears up to "
          + text(edge(settings.adviceCores(), false));
    }
    return "a new test that gives "
        + text(y)
        + " again cannot clear it, however it is sampled: "
        + settings.mostCores()
        + " cores"
        + (isWetBetter() ? " by wet chemistry" : "")
        + (limit.bound() == Bound.MAX ? " clear only up to " : " clear only from ")
        + text(edge(settings.mostCores(), isWetBetter()));
  }

  private String exceeded() {
    OptionalInt same = cores(false);
    OptionalInt wet = isWetBetter() ? cores(true) : OptionalInt.empty();
    String shown =
        same.isPresent() || wet.isPresent()
            ? "; a new sample of "
                + (same.isPresent() ? count(same.getAsInt()) + " by the same method" : "")
                + (same.isPresent() && wet.isPresent() ? ", or of " : "")
                + (wet.isPresent() ? count(wet.getAsInt()) + " by wet chemistry" : "")
                + " would show that it exceeds"
            : "";
    return "a new test that gives "
        + text(y)
        + " again cannot clear it; "
        + settings.adviceCores()
        + " cores"
        + (isWetBetter() ? " by wet chemistry" : "")
        + (limit.bound() == Bound.MAX ? " would clear up to " : " would clear from ")
        + text(edge(settings.adviceCores(), isWetBetter()))
        + shown;
  }

  /**
   * The fewest cores, at least those taken, after which the same figure stands outside the guard
   * band; empty if the most that anybody takes do not.
   */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, u² = u_lab² + s_core²/n + u_rest²")
  OptionalInt cores(boolean wet) {
    double distance = Math.abs(y - limit.value()) * (1 + DecisionRule.TIE);
    for (int n = budget.cores(); n <= Math.max(budget.cores(), settings.mostCores()); n++) {
      if (guard(n, wet) <= distance) {
        return OptionalInt.of(n);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * The value nearest to the limit that such a test would clear: {@code L − w}, or {@code L + w}.
   */
  double edge(int cores, boolean wet) {
    double guard = guard(Math.max(cores, budget.cores()), wet);
    return Math.max(0, limit.bound() == Bound.MAX ? limit.value() - guard : limit.value() + guard);
  }

  private double guard(int cores, boolean wet) {
    return limit.guardFactor() * budget.u(cores, wet) * factor;
  }

  private String text(double value) {
    return Words.number(value) + " " + limit.unit().text();
  }

  private static String count(int cores) {
    return cores == 1 ? "1 core" : cores + " cores";
  }
}
