package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the search must know of a horse.
 *
 * @param id register key
 * @param bodyWeightKg body weight of the register, kg, above 0; label doses and rates go by it
 * @param conditions lower-case codes such as {@code dental}, {@code hypp}, {@code ulcers}
 * @param mealsPerDay bucket meals a day, at least 1
 */
public record HorseFacts(
    String id, double bodyWeightKg, SortedSet<String> conditions, int mealsPerDay) {
  public HorseFacts {
    requireNonNull(id, "id");
    if (!(bodyWeightKg > 0 && Double.isFinite(bodyWeightKg))) {
      throw new IllegalArgumentException("body weight must be above 0, was " + bodyWeightKg);
    }
    if (mealsPerDay < 1) {
      throw new IllegalArgumentException("meals a day must be at least 1, was " + mealsPerDay);
    }
    conditions = Collections.unmodifiableSortedSet(new TreeSet<>((Collection<String>) conditions));
  }
}
