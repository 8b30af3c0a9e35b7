package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rickyard.core.nutrition.RequirementTables.RequirementTerm;
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
   * over the rows that hold for its stage of life.
   *
   * @param horse as the register describes it
   * @param asOf the day, for the age
   * @param standards tables of the edition in use
   */
  @Cites(source = "nrc2007-recalled", locator = "equations behind the requirement tables")
  public static Requirements of(Horse horse, LocalDate asOf, FeedingStandards standards) {
    LifeStage stage = LifeStage.of(horse, asOf);
    Map<Nutrient, Requirement> found = new EnumMap<>(Nutrient.class);
    Drivers drivers = new Drivers(horse, stage, standards.requirements());
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed()) {
        Requirement requirement = of(nutrient, stage, drivers, standards, horse.type());
        found.put(nutrient, requirement);
        drivers.learn(requirement);
      }
    }
    return new Requirements(horse.id(), stage, found);
  }

  private static Requirement of(
      Nutrient nutrient,
      LifeStage stage,
      Drivers drivers,
      FeedingStandards standards,
      HorseType type) {
    if (!stage.gap().isEmpty()) {
      return Requirement.none(nutrient, stage.gap());
    }
    List<RequirementTerm> terms = standards.requirements().termsOf(nutrient, stage);
    if (terms.isEmpty()) {
      return Requirement.none(
          nutrient, "no published value for " + stage.words() + " is in the tables");
    }
    double scale = nutrient == Nutrient.DE ? standards.settings().energyFactor(type) : 1;
    List<Requirement.Part> parts = new ArrayList<>();
    for (RequirementTerm term : terms) {
      double driver = drivers.value(term.driver());
      parts.add(
          new Requirement.Part(
              term.coefficient(),
              scale,
              term.driver(),
              driver,
              term.coefficient() * scale * driver,
              term.source()));
    }
    return Requirement.sum(nutrient, parts);
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
