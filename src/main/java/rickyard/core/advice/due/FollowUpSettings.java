package rickyard.core.advice.due;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import rickyard.core.nutrition.Horse;

/**
 * How long things hold, from {@code config/follow-ups.csv}.
 *
 * @param weightDays days that a body weight counts as fresh, by condition or status; {@code ""} is
 *     the default
 * @param testMonths months that a test of a lot counts as fresh, by material; {@code ""} is the
 *     default
 * @param recheckDays days after telling a client, or after the last day of a changeover
 * @param aheadDays what falls due within so many days is listed
 */
public record FollowUpSettings(
    SortedMap<String, Integer> weightDays,
    SortedMap<String, Integer> testMonths,
    int recheckDays,
    int aheadDays) {

  public FollowUpSettings {
    weightDays = Collections.unmodifiableSortedMap(new TreeMap<>(weightDays));
    testMonths = Collections.unmodifiableSortedMap(new TreeMap<>(testMonths));
    if (!weightDays.containsKey("") || !testMonths.containsKey("")) {
      throw new IllegalArgumentException("no default of weight days or test months");
    }
    if (recheckDays < 1 || aheadDays < 0) {
      throw new IllegalArgumentException("days must be above 0");
    }
  }

  /** The shortest of the horse's status and conditions. */
  int weightDays(Horse horse) {
    int shortest = weightDays.getOrDefault("", 0);
    shortest =
        Math.min(shortest, weightDays.getOrDefault(horse.status().code(), Integer.MAX_VALUE));
    SortedSet<String> conditions = horse.conditions();
    for (String condition : conditions) {
      shortest = Math.min(shortest, weightDays.getOrDefault(condition, Integer.MAX_VALUE));
    }
    return shortest;
  }

  int testMonths(String material) {
    return testMonths.getOrDefault(material, testMonths.getOrDefault("", 0));
  }
}
