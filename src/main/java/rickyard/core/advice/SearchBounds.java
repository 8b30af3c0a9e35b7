package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.NutrientLine;
import rickyard.core.nutrition.Origin;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;
import rickyard.core.remedy.EnergyBand;
import rickyard.core.remedy.IntakeRange;
import rickyard.core.remedy.NutrientNeed;

/** How much a horse may and must be fed, as the search for remedies takes it. */
final class SearchBounds {
  private final Horse horse;
  private final FeedingStandards standards;

  SearchBounds(Horse horse, FeedingStandards standards) {
    this.horse = horse;
    this.standards = standards;
  }

  /** Least forage of any day, kg of dry matter: the vet's line, or the last one with a vet plan. */
  double forageFloorKgDm() {
    IntakeRule rule = standards.intakeRule(horse);
    double percent = horse.vetPlan() ? rule.refuseBelow() : rule.vetBelow();
    return percent * standards.settings().lowEndKg(horse) / 100;
  }

  /**
   * The range of a whole ration.
   *
   * @param ration what it is to be fed without a change
   * @param diet the same, evaluated
   * @param present what it is still fed, evaluated
   */
  IntakeRange intake(List<Portion> ration, Diet diet, Diet present) {
    IntakeRule rule = standards.intakeRule(horse);
    double floor = forageFloorKgDm();
    double today = ration.stream().mapToDouble(Portion::kgDm).sum();
    double least = Math.max(floor, leastOfAll(rule, today));
    double ceiling = Math.max(rule.usualMax() * standards.settings().lowEndKg(horse) / 100, today);
    return new IntakeRange(
        Math.min(least, ceiling),
        ceiling,
        Math.min(floor, ceiling),
        rule.strawUsualPercent() / 100,
        energy(diet, present));
  }

  /**
   * Energy of a changed ration: a horse that is not fat gets no less than its need or than it gets
   * without the change, whichever is less; one that is not thin no more than the larger of the two;
   * {@code energy_even_pct} of the need counts as even. Empty where reports do not tell the energy
   * of all that it eats.
   */
  private Optional<EnergyBand> energy(Diet diet, Diet present) {
    NutrientLine line = diet.line(Nutrient.DE);
    if (!isReported(line) || line.requirement().isEmpty() || !diet.isWhole()) {
      return Optional.empty();
    }
    double need = line.requirement().getAsDouble();
    double supply = line.supply().best();
    NutrientLine before = present.line(Nutrient.DE);
    double now = isReported(before) ? before.supply().best() : supply;
    double even = need * standards.settings().number("energy_even_pct") / 100;
    boolean mayLose =
        diet.energy().isFat()
            && (horse.vetPlan() || !standards.intakeRule(horse).isNeverRestricted());
    return Optional.of(
        new EnergyBand(
            mayLose ? 0 : Math.max(0, Math.min(need, Math.min(supply, now)) - even),
            diet.energy().isThin()
                ? Double.POSITIVE_INFINITY
                : Math.max(need, Math.max(supply, now)) + even));
  }

  /** Whether every item's content of a nutrient was reported. */
  static boolean isReported(NutrientLine line) {
    return line.supply().isComplete() && line.supply().origin() == Origin.REPORTED;
  }

  /**
   * Least dry matter in all, kg: without a vet plan a donkey, a miniature, a pregnant, lactating or
   * sick animal is given no less than today, as far as it would eat by itself.
   */
  private double leastOfAll(IntakeRule rule, double today) {
    return rule.isNeverRestricted() && !horse.vetPlan()
        ? Math.min(today, rule.adlib() / 100 * horse.bodyWeightKg())
        : 0;
  }

  /** Nutrients that a ration should not lack. */
  static List<NutrientNeed> needs(Requirements requirements) {
    List<NutrientNeed> needs = new ArrayList<>();
    for (Nutrient nutrient : Nutrient.values()) {
      OptionalDouble need = requirements.get(nutrient).atLeast();
      if (nutrient.isSummed() && need.isPresent() && need.getAsDouble() > 0) {
        needs.add(new NutrientNeed(nutrient.code(), need.getAsDouble()));
      }
    }
    return needs;
  }
}
