package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The office's choices for proposals, from {@code config/remedy.csv}.
 *
 * @param changeWeight price of one kg of dry matter taken away or added
 * @param targetWeight price of one kg of dry matter off the target
 * @param shortfallWeight price of missing a nutrient's need altogether
 * @param costWeight price of one money unit per day: small, so that cost only breaks ties
 * @param kgSteps weighable amounts in kg
 * @param lbSteps weighable amounts in lb
 * @param controlledShares shares of the forage dry matter that are always shown, in (0, 1]
 * @param stockHorizonDays days that a stock must last
 * @param monthDays days of a month in units per month
 * @param largestPool most items that are tried in pairs
 * @param largestNumberOfChecks most weighable rations of one proposal that are checked
 * @param chewableForms forms for a horse that cannot chew long stems
 * @param changeoverDays days of the steps before the full share, by condition; {@code ""} is the
 *     default
 * @param changeoverShares shares of the steps before the full one, in (0, 1), rising
 */
public record RemedySettings(
    double changeWeight,
    double targetWeight,
    double shortfallWeight,
    double costWeight,
    ScaleSteps kgSteps,
    ScaleSteps lbSteps,
    List<Double> controlledShares,
    double stockHorizonDays,
    double monthDays,
    int largestPool,
    int largestNumberOfChecks,
    SortedSet<String> chewableForms,
    SortedMap<String, Integer> changeoverDays,
    List<Double> changeoverShares) {

  public RemedySettings {
    requireNonNull(kgSteps, "kgSteps");
    requireNonNull(lbSteps, "lbSteps");
    controlledShares = List.copyOf(controlledShares);
    chewableForms = Collections.unmodifiableSortedSet(new TreeSet<>(chewableForms));
    changeoverDays = Collections.unmodifiableSortedMap(new TreeMap<>(changeoverDays));
    changeoverShares = List.copyOf(changeoverShares);
    if (!(changeWeight > 0 && targetWeight >= 0 && shortfallWeight >= 0 && costWeight >= 0)) {
      throw new IllegalArgumentException("weights must be >= 0, that of change above 0");
    }
    if (!(stockHorizonDays > 0 && monthDays > 0)) {
      throw new IllegalArgumentException("days must be above 0");
    }
    if (!changeoverDays.containsKey("")) {
      throw new IllegalArgumentException("no default number of changeover days");
    }
  }

  ScaleSteps steps(MassUnit unit) {
    return unit == MassUnit.KG ? kgSteps : lbSteps;
  }

  /** Days of the steps before the full share: the longest of the horse's conditions. */
  public int changeoverDaysFor(SortedSet<String> conditions) {
    int longest = changeoverDays.getOrDefault("", 0);
    for (String condition : conditions) {
      longest = Math.max(longest, changeoverDays.getOrDefault(condition, 0));
    }
    return longest;
  }
}
