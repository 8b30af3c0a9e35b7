package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalInt;

/**
 * One thing that a horse is given each day, as the register says it.
 *
 * @param item lot or feed id
 * @param batch batch of a feed; empty if not said
 * @param amount in {@code unit}; at least 0; not used for ad-lib
 * @param unit as written: kg, lb, pct_bw, ad-lib, bale, flake, net, scoop; as fed per day
 * @param asForage fed as forage (true) or in the bucket (false)
 * @param meals meals a day of this item, if said
 * @param prepared dry, soaked or steamed
 * @param row row of the register, from 1 with the header as row 1; 0 where it is of none
 */
public record RationItem(
    String item,
    String batch,
    double amount,
    String unit,
    boolean asForage,
    OptionalInt meals,
    String prepared,
    int row) {

  /** An item of no register. */
  public RationItem(
      String item,
      String batch,
      double amount,
      String unit,
      boolean asForage,
      OptionalInt meals,
      String prepared) {
    this(item, batch, amount, unit, asForage, meals, prepared, 0);
  }

  public RationItem {
    requireNonNull(item, "item");
    requireNonNull(batch, "batch");
    requireNonNull(unit, "unit");
    requireNonNull(meals, "meals");
    requireNonNull(prepared, "prepared");
    if (!(Double.isFinite(amount) && amount >= 0)) {
      throw new IllegalArgumentException("amount must be finite and >= 0, was " + amount);
    }
  }
}
