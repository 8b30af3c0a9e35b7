package rickyard.core.remedy;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the diet code says of a ration.
 *
 * @param limits every limit of the horse, worst first
 * @param obstacles why it may not be fed apart from the limits (below a floor, above a ceiling or a
 *     tolerance, too much straw), in plain words; empty if there is none
 * @param shortfalls what is missing of each nutrient per day, in the nutrient's unit, above 0
 * @param newlyShort of those, what reports alone tell and the ration without a change does not lack
 */
public record CheckedDiet(
    List<CheckedLimit> limits,
    List<String> obstacles,
    SortedMap<String, Double> shortfalls,
    SortedSet<String> newlyShort) {
  public CheckedDiet {
    limits = List.copyOf(limits);
    obstacles = List.copyOf(obstacles);
    shortfalls = Collections.unmodifiableSortedMap(new TreeMap<>(shortfalls));
    newlyShort = Collections.unmodifiableSortedSet(new TreeSet<>(newlyShort));
  }

  /** Whether every binding limit is cleared and nothing stands against feeding it. */
  public boolean isEnough() {
    return obstacles.isEmpty() && uncleared().isEmpty();
  }

  /** The binding limits that are not cleared, as given. */
  public List<CheckedLimit> uncleared() {
    return limits.stream().filter(l -> l.isBinding() && !l.isCleared()).toList();
  }

  /** The binding limit to speak of: the first that is not cleared, else the one nearest to it. */
  Optional<CheckedLimit> leading() {
    return uncleared().stream()
        .findFirst()
        .or(
            () ->
                limits.stream()
                    .filter(CheckedLimit::isBinding)
                    .max(Comparator.comparingDouble(l -> l.pOver().orElse(0))));
  }
}
