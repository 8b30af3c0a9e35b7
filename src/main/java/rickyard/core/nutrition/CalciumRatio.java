package rickyard.core.nutrition;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import rickyard.core.quantity.Cites;

/** Calcium to phosphorus of a whole diet. */
final class CalciumRatio {
  private CalciumRatio() {}

  /**
   * The ratio against its floor and its ceiling: {@code Ca/P}, with {@code (u/r)² = (u_Ca/Ca)² +
   * (u_P/P)²}.
   *
   * @param calcium g per day
   * @param phosphorus g per day
   */
  @Cites(source = "s28b", locator = "should not drop below 1.1:1")
  @Cites(source = "s23", locator = "adults tolerate 5:1, foals 3:1, never below 1:1")
  static NutrientLine line(Amount calcium, Amount phosphorus, Horse horse, Settings settings) {
    boolean isGrowing = horse.status() == HorseStatus.GROWING;
    double max = settings.number(isGrowing ? "ca_p_max_growing" : "ca_p_max_adult");
    return NutrientLine.of(
        Nutrient.CA_P,
        ratio(calcium, phosphorus),
        OptionalDouble.of(settings.number("ca_p_warn_below")),
        OptionalDouble.of(max),
        true);
  }

  private static Amount ratio(Amount calcium, Amount phosphorus) {
    TreeSet<String> missing = new TreeSet<>(calcium.missing());
    missing.addAll(phosphorus.missing());
    if (!(phosphorus.best() > 0)) {
      missing.add("no phosphorus");
    }
    Origin origin = calcium.origin().and(phosphorus.origin());
    if (!missing.isEmpty()) {
      return new Amount(0, 0, Double.POSITIVE_INFINITY, 0, 0, origin, List.copyOf(missing));
    }
    double ratio = calcium.best() / phosphorus.best();
    double relative =
        StrictMath.hypot(
            calcium.best() > 0 ? calcium.u() / calcium.best() : 0,
            phosphorus.u() / phosphorus.best());
    double u = ratio * relative;
    double ceiling = origin == Origin.REPORTED ? ratio + 2 * u : ratio;
    return new Amount(ratio, ratio, ratio, u, ceiling, origin, List.of());
  }
}
