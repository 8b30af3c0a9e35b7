package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;
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
   */
  IntakeRange intake(List<Portion> ration) {
    IntakeRule rule = standards.intakeRule(horse);
    double floor = forageFloorKgDm();
    double today = ration.stream().mapToDouble(Portion::kgDm).sum();
    double least = Math.max(floor, leastOfAll(rule, today));
    double ceiling = Math.max(rule.usualMax() * standards.settings().lowEndKg(horse) / 100, today);
    return new IntakeRange(
        Math.min(least, ceiling),
        ceiling,
        Math.min(floor, ceiling),
        rule.strawUsualPercent() / 100);
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
