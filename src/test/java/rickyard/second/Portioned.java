package rickyard.second;

import java.util.OptionalInt;

/**
 * What is given of a food per day.
 *
 * @param food what
 * @param kg as fed
 * @param uKg its standard uncertainty; 0 for a weighed amount
 * @param isBucket from the bucket, not as forage
 * @param meals meals of this item, if said
 */
record Portioned(Food food, double kg, double uKg, boolean isBucket, OptionalInt meals) {
  Portioned inPlaceOf(Food other) {
    double factor = food.dryMatter().best() / other.dryMatter().best();
    return new Portioned(other, kg * factor, uKg * factor, isBucket, meals);
  }
}
