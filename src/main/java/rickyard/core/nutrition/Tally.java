package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Sums contents times dry matter over the items of a diet. */
final class Tally {
  private final Unit unit;
  private final double perKg;
  private double best;
  private double lower;
  private double upper;
  private double ceiling;
  private double variance;
  private double reportedVariance;
  private Optional<Origin> origin = Optional.empty();
  private final List<String> missing = new ArrayList<>();

  /**
   * @param unit unit of the contents
   * @param perKg amount from one kg of dry matter that holds one unit
   */
  Tally(Unit unit, double perKg) {
    this.unit = unit;
    this.perKg = perKg;
  }

  /**
   * Adds an item: {@code kg DM x content}, with {@code u² = (kg u_c)² + (c u_kg)²}.
   *
   * @param kgDm dry matter, kg
   * @param kgDmU its standard uncertainty
   * @param content content on dry matter
   */
  @Cites(source = "jcgm100-2008", locator = "5.1.2, law of propagation")
  void add(double kgDm, double kgDmU, Measured content) {
    if (kgDm == 0 && kgDmU == 0) {
      return;
    }
    Measured c = content.in(unit);
    Origin from = Origin.of(content.evidence());
    double square = square(kgDm * c.u() * perKg) + square(c.best() * kgDmU * perKg);
    best += kgDm * c.best() * perKg;
    lower += kgDm * c.lower() * perKg;
    upper += c.isBoundedAbove() ? kgDm * c.upper() * perKg : Double.POSITIVE_INFINITY;
    boolean firm = from == Origin.REPORTED;
    ceiling += kgDm * (firm && c.isBoundedAbove() ? c.upper() : c.best()) * perKg;
    variance += square;
    reportedVariance += firm ? square : 0;
    origin = Optional.of(origin.map(o -> o.and(from)).orElse(from));
  }

  /** Adds an item whose content is unknown: the sum is open above. */
  void addUnknown(String key) {
    missing.add(key);
    upper = Double.POSITIVE_INFINITY;
  }

  Amount total() {
    Collections.sort(missing);
    return new Amount(
        best,
        lower,
        upper,
        StrictMath.sqrt(variance),
        ceiling + 2 * StrictMath.sqrt(reportedVariance),
        origin.orElse(Origin.REPORTED),
        missing);
  }

  private static double square(double x) {
    return x * x;
  }
}
