package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rickyard.core.nutrition.Portion;

/**
 * One item of a diet.
 *
 * @param item lot or feed id
 * @param batch of a feed; empty otherwise
 * @param name as people call it
 * @param role forage, controlled-forage, balancer …
 * @param asForage fed as forage, not in the bucket
 * @param kg as fed per day
 * @param dmKg dry matter per day
 * @param nscPercent WSC + starch, % of dry matter; null if unknown
 * @param nscU its standard uncertainty; null if unknown
 * @param prepared dry, soaked or steamed; dry where an earlier morning did not keep it
 */
public record PortionLine(
    String item,
    String batch,
    String name,
    String role,
    boolean asForage,
    double kg,
    double dmKg,
    @Nullable Double nscPercent,
    @Nullable Double nscU,
    String prepared)
    implements Serializable {
  public PortionLine {
    requireNonNull(item, "item");
    requireNonNull(batch, "batch");
    requireNonNull(name, "name");
    requireNonNull(role, "role");
    prepared = Objects.requireNonNullElse(prepared, Portion.DRY);
  }

  /** A portion fed dry. */
  public PortionLine(
      String item,
      String batch,
      String name,
      String role,
      boolean asForage,
      double kg,
      double dmKg,
      @Nullable Double nscPercent,
      @Nullable Double nscU) {
    this(item, batch, name, role, asForage, kg, dmKg, nscPercent, nscU, Portion.DRY);
  }
}
