package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * From which ration to which, for what horse.
 *
 * @param today what it is fed now
 * @param then the proposal
 * @param conditions lower-case codes of the horse
 * @param forageFloorKgDm least forage of any day, kg of dry matter
 * @param exceedsSugar whether the forage fed today exceeds a starch-and-sugar limit of the horse
 * @param isThenEnough whether the proposal clears every binding limit
 * @param isOldGone whether the forage fed today is no longer there
 * @param units unit of the scale
 * @param settings the office's choices
 */
public record ChangeoverRequest(
    List<Serving> today,
    List<Serving> then,
    SortedSet<String> conditions,
    double forageFloorKgDm,
    boolean exceedsSugar,
    boolean isThenEnough,
    boolean isOldGone,
    MassUnit units,
    RemedySettings settings) {
  public ChangeoverRequest {
    today = List.copyOf(today);
    then = List.copyOf(then);
    conditions = Collections.unmodifiableSortedSet(new TreeSet<>((Collection<String>) conditions));
    requireNonNull(units, "units");
    requireNonNull(settings, "settings");
    if (!(forageFloorKgDm >= 0)) {
      throw new IllegalArgumentException("forage floor must be >= 0, was " + forageFloorKgDm);
    }
  }
}
