package rickyard.core.remedy;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The least of an item that a person troubles to weigh out: a change gives at least so much of it
 * or none.
 *
 * @param percentOfBodyWeight kg as fed per day and 100 kg of body weight, by role; {@link #FORAGE}
 *     for whatever is fed as forage, {@link #OTHER} where the role has none of its own
 */
public record LeastPortions(SortedMap<String, Double> percentOfBodyWeight) {
  /** Key of what is fed as forage. */
  public static final String FORAGE = "forage";

  /** Key of every other item. */
  public static final String OTHER = "";

  public LeastPortions {
    percentOfBodyWeight = Collections.unmodifiableSortedMap(new TreeMap<>(percentOfBodyWeight));
    if (!percentOfBodyWeight.containsKey(FORAGE) || !percentOfBodyWeight.containsKey(OTHER)) {
      throw new IllegalArgumentException("no least portion of forage or of every other item");
    }
    percentOfBodyWeight.values().stream()
        .filter(v -> !(v >= 0 && Double.isFinite(v)))
        .findFirst()
        .ifPresent(
            v -> {
              throw new IllegalArgumentException("a least portion must be >= 0, was " + v);
            });
  }

  /**
   * Least amount of an item, kg as fed per day.
   *
   * @param role of the item
   * @param fedAsForage whether it is fed as forage
   * @param bodyWeightKg body weight, kg, above 0
   */
  double kg(String role, boolean fedAsForage, double bodyWeightKg) {
    String key = fedAsForage ? FORAGE : role;
    double percent =
        percentOfBodyWeight.getOrDefault(key, percentOfBodyWeight.getOrDefault(OTHER, 0.0));
    return percent * bodyWeightKg / 100;
  }
}
