package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.OptionalInt;

/**
 * An item of a ration and how much of it is fed.
 *
 * @param item what
 * @param kg as fed per day, at least 0
 * @param fedAsForage fed as forage (true) or in the bucket (false)
 * @param meals bucket meals a day that it is spread over; the horse's own number where empty
 */
public record Amount(Candidate item, double kg, boolean fedAsForage, OptionalInt meals) {
  public Amount {
    requireNonNull(item, "item");
    requireNonNull(meals, "meals");
    if (!(Double.isFinite(kg) && kg >= 0)) {
      throw new IllegalArgumentException("kg of " + item.id() + " must be >= 0, was " + kg);
    }
  }

  /** Fed as forage. */
  public static Amount ofForage(Candidate item, double kg) {
    return new Amount(item, kg, true, OptionalInt.empty());
  }

  /** Fed in the bucket, over the horse's own number of meals. */
  public static Amount ofBucket(Candidate item, double kg) {
    return new Amount(item, kg, false, OptionalInt.empty());
  }

  /** Dry matter, kg per day. */
  public double dmKg() {
    return kg * item.dryMatterFraction();
  }

  Amount withKg(double other) {
    return new Amount(item, other, fedAsForage, meals);
  }
}
