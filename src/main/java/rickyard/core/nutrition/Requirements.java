package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import rickyard.core.quantity.Cites;

/**
 * What a horse needs per day, nutrient by nutrient, in the order of {@link Nutrient}.
 *
 * <p>Dry matter and the ratio of calcium to phosphorus are not requirements of the tables; the diet
 * holds them against the intake rules and tolerances.
 *
 * @param horseId whose
 * @param stage what was looked up
 * @param byNutrient every nutrient that is summed over items
 */
public record Requirements(String horseId, LifeStage stage, Map<Nutrient, Requirement> byNutrient) {

  public Requirements {
    requireNonNull(horseId, "horseId");
    requireNonNull(stage, "stage");
    byNutrient = Collections.unmodifiableMap(new EnumMap<>(byNutrient));
  }

  /**
   * The requirements of a horse at a day: for each nutrient the sum of {@code coefficient x driver}
   * over the rows that hold for its stage of life; beyond the tables what their rules say.
   *
   * @param horse as the register describes it
   * @param asOf the day, for the age
   * @param standards tables of the edition in use
   */
  @Cites(source = "nrc2007-recalled", locator = "equations behind the requirement tables")
  public static Requirements of(Horse horse, LocalDate asOf, FeedingStandards standards) {
    LifeStage stage = LifeStage.of(horse, asOf);
    RequirementLookup lookup = new RequirementLookup(horse, stage, standards);
    Map<Nutrient, Requirement> found = new EnumMap<>(Nutrient.class);
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed()) {
        found.put(nutrient, lookup.find(nutrient));
      }
    }
    return new Requirements(horse.id(), stage, found);
  }

  /** The requirement of a nutrient; one without a value says why. */
  public Requirement get(Nutrient nutrient) {
    Requirement found = byNutrient.get(nutrient);
    return found == null ? Requirement.none(nutrient, "not a requirement of the tables") : found;
  }

  /** The amount per day, in the nutrient's unit, if the tables know one. */
  public OptionalDouble perDay(Nutrient nutrient) {
    return get(nutrient).perDay();
  }
}
