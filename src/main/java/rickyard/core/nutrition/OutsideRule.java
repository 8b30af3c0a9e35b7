package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * What holds where the tables of requirements have no row: beyond their ages and months.
 *
 * @param scope the horses that it is for
 * @param nutrient which; empty for all
 * @param kind what is done
 * @param first the stage whose rows hold, or the lower end
 * @param second the upper end
 * @param words what must be said of it, one sentence without a full stop
 * @param source table row
 */
public record OutsideRule(
    Scope scope,
    Optional<Nutrient> nutrient,
    Kind kind,
    Optional<Stage> first,
    Optional<Stage> second,
    String words,
    Source source) {

  /** What is done where no row holds. */
  public enum Kind {
    /** There is no requirement. */
    NONE(0),
    /** The rows of another stage hold, exactly as there. */
    AS(1),
    /** The rows of another stage hold, with the horse's own age. */
    CONTINUE(1),
    /** No figure; the needs of two other stages enclose it. */
    BETWEEN(2);

    private final int stages;

    Kind(int stages) {
      this.stages = stages;
    }
  }

  /**
   * Another stage of life.
   *
   * @param life as in {@link LifeStage}
   * @param level as there; {@code =} is the horse's own
   * @param month month or age in months
   */
  public record Stage(String life, String level, int month) {
    public Stage {
      requireNonNull(life, "life");
      requireNonNull(level, "level");
    }

    LifeStage of(LifeStage own) {
      return new LifeStage(life, level.equals("=") ? own.level() : level, month, "");
    }
  }

  public OutsideRule {
    requireNonNull(scope, "scope");
    requireNonNull(nutrient, "nutrient");
    requireNonNull(kind, "kind");
    requireNonNull(source, "source");
    if ((first.isPresent() ? 1 : 0) + (second.isPresent() ? 1 : 0) != kind.stages
        || (second.isPresent() && first.isEmpty())) {
      throw new IllegalArgumentException("this rule names " + kind.stages + " stages");
    }
    if (words.isEmpty()) {
      throw new IllegalArgumentException("this rule needs words");
    }
  }

  boolean holds(Nutrient asked, LifeStage stage) {
    return scope.holds(stage) && nutrient.map(n -> n == asked).orElse(true);
  }
}
