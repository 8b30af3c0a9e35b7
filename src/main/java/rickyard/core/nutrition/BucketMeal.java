package rickyard.core.nutrition;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;

/**
 * The largest bucket meal of a day: every bucket item at its amount per meal, given together.
 *
 * <p>Forage eaten over hours is not in it; for that the content of the diet and the daily total
 * stand.
 *
 * @param kgAsFed kg as fed in the meal
 * @param kgDm kg of dry matter in the meal
 * @param bodyWeightKg the register's body weight
 * @param grams g per meal of NSC_WSC, NSC_ESC, STARCH, WSC, ESC and K
 */
public record BucketMeal(
    double kgAsFed, double kgDm, double bodyWeightKg, SortedMap<AnalyteCode, Amount> grams) {

  public BucketMeal {
    grams = Collections.unmodifiableSortedMap(new TreeMap<>(grams));
  }

  public boolean isEmpty() {
    return kgAsFed == 0;
  }

  /** Grams of one of the listed contents in the meal. */
  public Amount get(AnalyteCode code) {
    Amount found = grams.get(code);
    if (found == null) {
      throw new IllegalArgumentException("bucket meals are not summed for " + code);
    }
    return found;
  }

  /** Grams per kg of body weight in the meal. */
  public Amount perKgBodyWeight(AnalyteCode code) {
    return get(code).per(bodyWeightKg);
  }
}
