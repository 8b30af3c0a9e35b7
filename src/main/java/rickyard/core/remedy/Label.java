package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;
import rickyard.core.nutrition.Feed;

/**
 * What a label says of amounts.
 *
 * @param fullRateLow kg as fed per 100 kg of body weight at which it is a whole ration, low end
 * @param fullRateHigh high end
 * @param doseLowKg kg as fed per day for a 500-kg horse, low end
 * @param doseHighKg high end
 * @param isComplete whether it is sold as a complete ration, vitamins and minerals included
 */
public record Label(
    OptionalDouble fullRateLow,
    OptionalDouble fullRateHigh,
    OptionalDouble doseLowKg,
    OptionalDouble doseHighKg,
    boolean isComplete) {

  /** The body weight that a label's dose is for, kg. */
  public static final double DOSE_BODY_WEIGHT_KG = 500;

  /** A label that says nothing. */
  public static final Label NONE =
      new Label(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false);

  public Label {
    requireNonNull(fullRateLow, "fullRateLow");
    requireNonNull(fullRateHigh, "fullRateHigh");
    requireNonNull(doseLowKg, "doseLowKg");
    requireNonNull(doseHighKg, "doseHighKg");
    inOrder(fullRateLow, fullRateHigh);
    inOrder(doseLowKg, doseHighKg);
  }

  /** What the register says of a feed's amounts. */
  public static Label of(Feed feed) {
    return new Label(
        feed.fullRateLow(),
        feed.fullRateHigh(),
        feed.doseLowKg(),
        feed.doseHighKg(),
        feed.complete());
  }

  private static void inOrder(OptionalDouble low, OptionalDouble high) {
    if (low.isPresent() && high.isPresent() && !(low.getAsDouble() <= high.getAsDouble())) {
      throw new IllegalArgumentException("label range is reversed: " + low + " to " + high);
    }
  }

  /** Whether it says how much a horse gets of it. */
  boolean hasDose() {
    return doseLowKg.isPresent() || doseHighKg.isPresent();
  }

  /** Least dose of a body weight, kg as fed per day; 0 where the label gives none. */
  public double leastDoseKg(double bodyWeightKg) {
    return doseLowKg.orElse(doseHighKg.orElse(0)) * bodyWeightKg / DOSE_BODY_WEIGHT_KG;
  }

  /** Largest dose of a body weight, kg as fed per day; infinite where the label gives none. */
  public double mostDoseKg(double bodyWeightKg) {
    return doseHighKg.orElse(doseLowKg.orElse(Double.POSITIVE_INFINITY))
        * bodyWeightKg
        / DOSE_BODY_WEIGHT_KG;
  }

  /** Most of a whole ration, kg as fed per day; infinite where the label gives none. */
  public double mostAsWholeRationKg(double bodyWeightKg) {
    return fullRateHigh.orElse(Double.POSITIVE_INFINITY) * bodyWeightKg / 100;
  }

  /** Least of a whole ration, kg as fed per day; 0 where the label gives none. */
  public double leastAsWholeRationKg(double bodyWeightKg) {
    return fullRateLow.orElse(0) * bodyWeightKg / 100;
  }
}
