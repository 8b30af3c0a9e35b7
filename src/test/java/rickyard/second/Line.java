package rickyard.second;

import java.util.OptionalDouble;

/** A nutrient of a diet as diets.csv shows it; NaN where a cell is blank. */
record Line(
    boolean isKnown,
    double supply,
    double low,
    double high,
    OptionalDouble requirement,
    OptionalDouble maxTolerable,
    String status,
    String origin) {
  private static final double TIE = 1e-9;

  static Line of(
      String code, Mixture.Supply supply, OptionalDouble need, OptionalDouble max, boolean alarms) {
    Num total = supply.total();
    double low = Math.max(0, total.lower() - 2 * total.u());
    double high = total.upper() + 2 * total.u();
    String status = status(code, supply, low, need, max, alarms);
    return new Line(supply.isKnown(), total.best(), low, high, need, max, status, total.origin());
  }

  private static String status(
      String code,
      Mixture.Supply supply,
      double low,
      OptionalDouble need,
      OptionalDouble max,
      boolean alarms) {
    if (alarms && max.isPresent() && isMore(supply.ceiling(), max.getAsDouble())) {
      return "above-ceiling";
    }
    if (need.isEmpty()) {
      return "no-requirement";
    }
    double needed = need.getAsDouble();
    // energy is never judged by a bound
    boolean isAssured = !isMore(needed, code.equals("DE") ? supply.total().best() : low);
    if (!supply.isComplete()) {
      // a ratio of sums that both lack something says nothing
      return isAssured && !code.equals("CA_P") ? "meets" : "unknown";
    }
    if (isMore(needed, supply.total().best())) {
      return "below";
    }
    return isAssured ? "meets" : "not-assured";
  }

  private static boolean isMore(double a, double b) {
    return a - b > TIE * Math.max(Math.abs(a), Math.abs(b));
  }

  OptionalDouble percentOfRequirement() {
    return requirement.isPresent() && requirement.getAsDouble() > 0
        ? OptionalDouble.of(100 * supply / requirement.getAsDouble())
        : OptionalDouble.empty();
  }
}
