package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Measured;

/** What would bring a borderline value outside the guard band, if the figure itself stays. */
final class Settling {
  /** More cores than this nobody takes: twice what the sampling texts ask for. */
  private static final int MOST_CORES = 40;

  private Settling() {}

  /**
   * The advice in plain words.
   *
   * @param factor from the budget's unit to the limit's unit
   */
  static String words(Limit limit, Measured value, ErrorBudget budget, double factor) {
    List<String> ways = new ArrayList<>();
    OptionalInt sameMethod = cores(limit, value, budget, factor, false);
    OptionalInt wet = cores(limit, value, budget, factor, true);
    sameMethod.ifPresent(n -> ways.add("a sample of " + n + " cores by the same method"));
    if (wet.isPresent() && budget.labWet() < budget.lab()) {
      int n = wet.getAsInt();
      ways.add(
          n <= budget.cores()
              ? "wet chemistry on " + budget.cores() + " cores"
              : "wet chemistry on a sample of " + n + " cores");
    }
    String stays =
        " if the figure stays at " + Words.number(end(limit, value)) + " " + limit.unit().text();
    if (ways.isEmpty()) {
      return "neither " + MOST_CORES + " cores nor wet chemistry would settle it" + stays;
    }
    return String.join(", or ", ways) + " would settle it" + stays;
  }

  /** The fewest cores that bring the value out of the guard band; empty if 40 do not. */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, u² = u_lab² + s_core²/n + u_rest²")
  static OptionalInt cores(
      Limit limit, Measured value, ErrorBudget budget, double factor, boolean wet) {
    double distance = Math.abs(end(limit, value) - limit.value());
    for (int n = budget.cores(); n <= MOST_CORES; n++) {
      if (limit.guardFactor() * budget.u(n, wet) * factor <= distance) {
        return OptionalInt.of(n);
      }
    }
    return OptionalInt.empty();
  }

  private static double end(Limit limit, Measured value) {
    return limit.bound() == Bound.MAX ? value.upper() : value.lower();
  }
}
