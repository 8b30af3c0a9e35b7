package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.core.nutrition.RequirementTables.RequirementTerm;

/**
 * Finds the requirements of one horse, nutrient by nutrient, in the order of {@link Nutrient}:
 * lysine goes by the protein found before it.
 */
final class RequirementLookup {
  private final Horse horse;
  private final LifeStage own;
  private final RequirementTables tables;
  private final double energyFactor;
  private final Map<Held, Drivers> drivers = new HashMap<>();

  /** The stage whose rows hold, and the months that ages are counted with. */
  private record Held(LifeStage rows, int months) {}

  RequirementLookup(Horse horse, LifeStage own, FeedingStandards standards) {
    this.horse = horse;
    this.own = own;
    this.tables = standards.requirements();
    this.energyFactor = standards.settings().energyFactor(horse.type());
  }

  Requirement find(Nutrient nutrient) {
    if (!own.gap().isEmpty()) {
      return Requirement.none(nutrient, own.gap());
    }
    if (!tables.termsOf(nutrient, own).isEmpty()) {
      return sum(nutrient, new Held(own, own.month()));
    }
    return tables
        .findOutside(nutrient, own)
        .map(rule -> outside(nutrient, rule))
        .orElseGet(() -> unknown(nutrient, own));
  }

  private Requirement outside(Nutrient nutrient, OutsideRule rule) {
    return switch (rule.kind()) {
      case NONE -> Requirement.none(nutrient, rule.words());
      case AS -> sum(nutrient, exactly(rule.first())).beyond(rule);
      case CONTINUE ->
          sum(nutrient, new Held(exactly(rule.first()).rows(), own.month())).beyond(rule);
      case BETWEEN ->
          Requirement.between(
              sum(nutrient, exactly(rule.first())), sum(nutrient, exactly(rule.second())), rule);
    };
  }

  private Held exactly(Optional<OutsideRule.Stage> named) {
    LifeStage stage = named.orElseThrow().of(own);
    return new Held(stage, stage.month());
  }

  private Requirement sum(Nutrient nutrient, Held held) {
    List<RequirementTerm> terms = tables.termsOf(nutrient, held.rows());
    if (terms.isEmpty()) {
      return unknown(nutrient, held.rows());
    }
    Drivers values =
        drivers.computeIfAbsent(held, h -> new Drivers(horse, h.rows(), h.months(), tables));
    double scale = nutrient == Nutrient.DE ? energyFactor : 1;
    List<Requirement.Part> parts = new ArrayList<>();
    for (RequirementTerm term : terms) {
      double driver = values.value(term.driver());
      parts.add(
          new Requirement.Part(
              term.coefficient(),
              scale,
              term.driver(),
              driver,
              term.coefficient() * scale * driver,
              term.source(),
              term.others()));
    }
    Requirement found = Requirement.sum(nutrient, parts);
    values.learn(found);
    return found;
  }

  private static Requirement unknown(Nutrient nutrient, LifeStage stage) {
    return Requirement.none(
        nutrient, "no published value for " + stage.words() + " is in the tables");
  }
}
