package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * A published edition of requirements: terms that add up, and the parameters that they use.
 *
 * @param edition folder name, for example {@code requirements-2007}
 * @param terms rows {@code coefficient x driver}
 * @param parameters work factors, milk yields, constants of the curves
 * @param outside what holds where no term does
 */
public record RequirementTables(
    String edition,
    List<RequirementTerm> terms,
    List<Parameter> parameters,
    List<OutsideRule> outside) {

  public RequirementTables {
    requireNonNull(edition, "edition");
    terms = List.copyOf(terms);
    parameters = List.copyOf(parameters);
    outside = List.copyOf(outside);
  }

  /** One row: so much of a nutrient per unit of the driver, and what other sources give for it. */
  public record RequirementTerm(
      Scope scope,
      Nutrient nutrient,
      Driver driver,
      double coefficient,
      Source source,
      List<OtherValue> others) {
    public RequirementTerm {
      requireNonNull(scope, "scope");
      requireNonNull(nutrient, "nutrient");
      requireNonNull(driver, "driver");
      requireNonNull(source, "source");
      others = List.copyOf(others);
      if (!Double.isFinite(coefficient)) {
        throw new IllegalArgumentException("coefficient must be finite, was " + coefficient);
      }
    }
  }

  /** One row: a named number. */
  public record Parameter(String name, Scope scope, double value, Source source) {
    public Parameter {
      requireNonNull(name, "name");
      requireNonNull(scope, "scope");
      requireNonNull(source, "source");
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(name + " must be finite, was " + value);
      }
    }
  }

  /** The terms of a nutrient that hold for a stage, in the order of the tables. */
  public List<RequirementTerm> termsOf(Nutrient nutrient, LifeStage stage) {
    return terms.stream().filter(t -> t.nutrient() == nutrient && t.scope().holds(stage)).toList();
  }

  /** The rule for a nutrient that no term of a stage is for. */
  Optional<OutsideRule> findOutside(Nutrient nutrient, LifeStage stage) {
    return outside.stream().filter(r -> r.holds(nutrient, stage)).findFirst();
  }

  /** The first row of that name that holds for a stage. */
  public Optional<Parameter> findParameter(String name, LifeStage stage) {
    return parameters.stream()
        .filter(p -> p.name().equals(name) && p.scope().holds(stage))
        .findFirst();
  }

  /** The value of a parameter that the tables must have for the stage. */
  public double getParameter(String name, LifeStage stage) {
    return findParameter(name, stage)
        .map(Parameter::value)
        .orElseThrow(() -> new IllegalArgumentException("no " + name + " for " + stage.words()));
  }
}
