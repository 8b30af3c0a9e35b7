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
public record Serving(Candidate item, double kg, boolean fedAsForage, OptionalInt meals) {
  public Serving {
    requireNonNull(item, "item");
    requireNonNull(meals, "meals");
    if (!(Double.isFinite(kg) && kg >= 0)) {
      throw new IllegalArgumentException("kg of " + item.id() + " must be >= 0, was " + kg);
    }
  }

  /** Fed as forage. */
  public static Serving ofForage(Candidate item, double kg) {
    return new Serving(item, kg, true, OptionalInt.empty());
  }

  /** Fed in the bucket, over the horse's own number of meals. */
  public static Serving ofBucket(Candidate item, double kg) {
    return new Serving(item, kg, false, OptionalInt.empty());
  }

  /** Dry matter, kg per day. */
  public double dmKg() {
    return kg * item.dryMatterFraction();
  }

  Serving withKg(double other) {
    return new Serving(item, other, fedAsForage, meals);
  }
}
