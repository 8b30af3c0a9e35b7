package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * One item of a changed ration.
 *
 * @param item what
 * @param nowKg kg as fed per day today
 * @param thenKg kg as fed per day in the proposal
 * @param fedAsForage fed as forage or in the bucket
 * @param unitsPerMonth bags or bales for a month; empty where the size is unknown
 * @param costPerDay of the item in the new ration; empty where the price is unknown
 * @param daysOfStock days that the stock lasts with all horses on it; empty where unknown
 */
public record RemedyItem(
    Candidate item,
    double nowKg,
    double thenKg,
    boolean fedAsForage,
    OptionalDouble unitsPerMonth,
    OptionalDouble costPerDay,
    OptionalDouble daysOfStock) {
  public RemedyItem {
    requireNonNull(item, "item");
    requireNonNull(unitsPerMonth, "unitsPerMonth");
    requireNonNull(costPerDay, "costPerDay");
    requireNonNull(daysOfStock, "daysOfStock");
  }
}
