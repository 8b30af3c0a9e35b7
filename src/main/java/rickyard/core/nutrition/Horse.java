package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A horse as the register describes it.
 *
 * @param id register key
 * @param clientId whose it is
 * @param name as people call it
 * @param type horse, pony, miniature or donkey
 * @param birthMonth if known
 * @param bodyWeightKg body weight now, kg, in (0, 1500]
 * @param weightBy how the weight was obtained
 * @param weighedOn when, if known
 * @param targetWeightKg wanted weight, kg
 * @param matureWeightKg mature weight, kg; for adults the body weight where the register is blank
 * @param status state of life
 * @param level degree within the status; average where the register is blank for maintenance
 * @param month month of pregnancy or lactation, from 1
 * @param bodyCondition 1 to 9
 * @param conditions lower-case codes such as {@code insulin-dysregulation}
 * @param mealsPerDay bucket meals a day, at least 1, if known
 * @param vetPlan whether a veterinary plan is on record
 * @param grazingHoursPerDay hours at grass; empty means that nobody asked
 * @param muzzle whether it grazes muzzled
 * @param extras treats, shared hay
 * @param herd name of the group that shares one bale; empty if it does not
 * @param tripFrom first day of a trip
 * @param tripTo last day of a trip
 */
public record Horse(
    String id,
    String clientId,
    String name,
    HorseType type,
    Optional<YearMonth> birthMonth,
    double bodyWeightKg,
    WeightBy weightBy,
    Optional<LocalDate> weighedOn,
    OptionalDouble targetWeightKg,
    OptionalDouble matureWeightKg,
    HorseStatus status,
    Level level,
    OptionalInt month,
    OptionalDouble bodyCondition,
    SortedSet<String> conditions,
    OptionalInt mealsPerDay,
    boolean vetPlan,
    OptionalDouble grazingHoursPerDay,
    boolean muzzle,
    Extras extras,
    String herd,
    Optional<LocalDate> tripFrom,
    Optional<LocalDate> tripTo) {

  public Horse {
    requireNonNull(id, "id");
    requireNonNull(clientId, "clientId");
    requireNonNull(name, "name");
    requireNonNull(type, "type");
    requireNonNull(status, "status");
    requireNonNull(level, "level");
    if (!(bodyWeightKg > 0 && bodyWeightKg <= 1500)) {
      throw new IllegalArgumentException("body weight must be in (0, 1500] kg: " + bodyWeightKg);
    }
    conditions = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(conditions));
  }

  /** Age in completed months at a day, counted from the first of the birth month. */
  public OptionalInt ageMonths(LocalDate asOf) {
    return birthMonth
        .map(
            born ->
                OptionalInt.of(
                    (int) java.time.temporal.ChronoUnit.MONTHS.between(born.atDay(1), asOf)))
        .orElseGet(OptionalInt::empty);
  }

  public boolean has(String condition) {
    return conditions.contains(condition);
  }
}
