package rickyard.core.advice;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One item of a changed ration.
 *
 * @param item lot or feed id
 * @param batch of a feed; empty otherwise
 * @param name as people call it
 * @param role forage, controlled-forage, balancer …
 * @param nowKg as fed per day before the change
 * @param thenKg as fed per day after it
 * @param unitsPerMonth bags or bales for 30 days; null if the size is unknown
 * @param costPerDay of this item in the new ration; null if the price is unknown
 * @param daysOfStock days that the stock lasts; null if unknown
 */
public record ProposalItem(
    String item,
    String batch,
    String name,
    String role,
    double nowKg,
    double thenKg,
    @Nullable Double unitsPerMonth,
    @Nullable Double costPerDay,
    @Nullable Double daysOfStock)
    implements Serializable {}
