package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalInt;

/**
 * An amount of a foodstuff given per day.
 *
 * @param food what
 * @param kgAsFed kg as fed per day, finite, at least 0
 * @param kgU standard uncertainty of the amount, kg; 0 for a weighed one
 * @param asForage fed as forage (true) or in the bucket (false)
 * @param meals meals a day of this item, at least 1, if said
 * @param prepared dry, soaked or steamed: recorded, and never a reason to count less sugar
 */
public record Portion(
    Foodstuff food,
    double kgAsFed,
    double kgU,
    boolean asForage,
    OptionalInt meals,
    String prepared) {

  /** What the register says where it says nothing. */
  public static final String DRY = "dry";

  public Portion {
    requireNonNull(food, "food");
    requireNonNull(meals, "meals");
    requireNonNull(prepared, "prepared");
    if (!(Double.isFinite(kgAsFed) && kgAsFed >= 0 && Double.isFinite(kgU) && kgU >= 0)) {
      throw new IllegalArgumentException("amount must be finite and >= 0 kg, was " + kgAsFed);
    }
    if (meals.isPresent() && meals.getAsInt() < 1) {
      throw new IllegalArgumentException("meals must be at least 1, were " + meals.getAsInt());
    }
  }

  /** A portion fed dry. */
  public Portion(Foodstuff food, double kgAsFed, double kgU, boolean asForage, OptionalInt meals) {
    this(food, kgAsFed, kgU, asForage, meals, DRY);
  }

  /** A weighed amount without a word about meals. */
  public static Portion of(Foodstuff food, double kgAsFed, boolean asForage) {
    return new Portion(food, kgAsFed, 0, asForage, OptionalInt.empty());
  }

  /** Kg of dry matter per day. */
  public double kgDm() {
    return kgAsFed * food.dryMatter().best() / 100;
  }

  /** Standard uncertainty of the dry matter per day, kg: of the amount alone. */
  double amountDmU() {
    return kgU * food.dryMatter().best() / 100;
  }

  /** Standard uncertainty of the dry matter per day, kg: of the amount and of the DM content. */
  double kgDmU() {
    return StrictMath.hypot(amountDmU(), kgAsFed * food.dryMatter().u() / 100);
  }

  public Portion withKg(double kg) {
    return new Portion(food, kg, kgU, asForage, meals, prepared);
  }

  public Portion withPrepared(String how) {
    return new Portion(food, kgAsFed, kgU, asForage, meals, how);
  }
}
