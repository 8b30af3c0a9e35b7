package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.List;

/**
 * The amounts that a person can weigh: multiples of a step that grows with the amount.
 *
 * @param unit unit of steps and bounds
 * @param steps from small to large; the last one has an infinite bound
 */
public record ScaleSteps(MassUnit unit, List<Step> steps) {
  private static final double TIE = 1e-9;

  /** Decimals of a step that are tried before it is worked out digit by digit. */
  private static final double MOST_DECIMALS = 1e4;

  /** Whole numbers below it are exact. */
  private static final double EXACT = 1L << 50;

  public ScaleSteps {
    requireNonNull(unit, "unit");
    steps = List.copyOf(steps);
    double before = 0;
    for (Step step : steps) {
      if (!(step.below() > before)) {
        throw new IllegalArgumentException("scale steps out of order at " + step.below());
      }
      before = step.below();
    }
    if (before != Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("the last scale step must have no bound");
    }
  }

  /**
   * One step.
   *
   * @param below amounts below it use the step, in the unit; infinite for the last
   * @param size multiples of it can be weighed, above 0
   */
  public record Step(double below, double size) {
    public Step {
      if (!(size > 0 && Double.isFinite(size))) {
        throw new IllegalArgumentException("a scale step must be above 0, was " + size);
      }
    }
  }

  /** The step of an amount, kg. */
  public double stepKg(double kg) {
    return step(kg).size() * unit.kg();
  }

  private Step step(double kg) {
    double amount = kg / unit.kg();
    for (Step step : steps) {
      if (amount < step.below() - TIE) {
        return step;
      }
    }
    return steps.get(steps.size() - 1);
  }

  /**
   * A weighable amount some steps away: 0 is the largest one not above {@code kg}, 1 the next. A
   * step across a bound has the size of where it lands.
   *
   * @return kg, at least 0
   */
  public double neighbourKg(double kg, int stepsAway) {
    double size = step(kg).size();
    double found = multipleKg(Math.floor(kg / unit.kg() / size + TIE), size);
    for (int i = 0; i < stepsAway; i++) {
      double up = step(found).size();
      found = multipleKg(Math.rint(found / unit.kg() / up) + 1, up);
    }
    for (int i = 0; i > stepsAway && found > 0; i--) {
      double down = step(found * (1 - 1e-6)).size();
      found = multipleKg(Math.rint(found / unit.kg() / down) - 1, down);
    }
    return found;
  }

  /** The nearest weighable amount, kg; ties go up. */
  public double nearestKg(double kg) {
    double size = step(kg).size();
    return multipleKg(Math.floor(kg / unit.kg() / size + 0.5 + TIE), size);
  }

  private double multipleKg(double count, double size) {
    return multiple(count, size) * unit.kg();
  }

  /**
   * Multiplied in decimals, so that 14 steps of 0.1 are 1.4. A whole number over a power of ten is
   * divided exactly rounded, which is what the decimal would give.
   */
  static double multiple(double count, double size) {
    double ten = 1;
    while (ten <= MOST_DECIMALS) {
      double whole = Math.rint(size * ten);
      if (whole / ten == size && count == Math.rint(count) && whole * count < EXACT) {
        return whole * count / ten;
      }
      ten *= 10;
    }
    return BigDecimal.valueOf(size).multiply(BigDecimal.valueOf(count)).doubleValue();
  }
}
