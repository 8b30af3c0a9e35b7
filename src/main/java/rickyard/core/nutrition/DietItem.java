package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * One portion of a diet with its share.
 *
 * @param portion what and how much
 * @param kgDm kg of dry matter per day
 * @param share of the diet's dry matter, 0 to 1; 0 for an empty diet
 */
public record DietItem(Portion portion, double kgDm, double share) {
  public DietItem {
    requireNonNull(portion, "portion");
  }
}
