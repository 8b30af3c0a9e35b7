package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * The state of life of a horse as the requirement tables know it.
 *
 * @param life maintenance, work, gestation, lactation, growth or stallion
 * @param level low, average, elevated; light, moderate, heavy, very-heavy; untrained; breeding,
 *     non-breeding; empty where the life has no levels
 * @param month month of gestation or lactation, or age in completed months; 0 where it does not
 *     matter
 * @param gap why no requirement can be looked up; empty if one can
 */
public record LifeStage(String life, String level, int month, String gap) {
  public LifeStage {
    requireNonNull(life, "life");
    requireNonNull(level, "level");
    requireNonNull(gap, "gap");
  }

  /**
   * The stage of a horse at a day. A blank maintenance level counts as average, a growing horse
   * without a level as untrained; what the tables do not cover is said in {@code gap}, never
   * guessed.
   */
  public static LifeStage of(Horse horse, LocalDate asOf) {
    return switch (horse.status()) {
      case MAINTENANCE -> maintenance(horse.level());
      case WORK -> work(horse.level());
      case PREGNANT -> byMonth("gestation", horse.month(), "month of pregnancy");
      case LACTATING -> byMonth("lactation", horse.month(), "month of lactation");
      case GROWING -> growing(horse, asOf);
      case STALLION -> stallion(horse.level());
    };
  }

  private static LifeStage maintenance(Level level) {
    return switch (level) {
      case LOW, AVERAGE, ELEVATED -> new LifeStage("maintenance", level.code(), 0, "");
      case NONE -> new LifeStage("maintenance", Level.AVERAGE.code(), 0, "");
      default -> unknownLevel("maintenance", level);
    };
  }

  private static LifeStage work(Level level) {
    return isTraining(level)
        ? new LifeStage("work", level.code(), 0, "")
        : unknownLevel("work", level);
  }

  private static LifeStage stallion(Level level) {
    return level == Level.BREEDING || level == Level.NON_BREEDING
        ? new LifeStage("stallion", level.code(), 0, "")
        : unknownLevel("stallion", level);
  }

  private static LifeStage byMonth(String life, OptionalInt month, String what) {
    if (month.isEmpty()) {
      return new LifeStage(life, "", 0, "the " + what + " is not given");
    }
    return new LifeStage(life, "", month.getAsInt(), "");
  }

  private static LifeStage growing(Horse horse, LocalDate asOf) {
    OptionalInt age = horse.ageMonths(asOf);
    if (age.isEmpty()) {
      return new LifeStage("growth", "", 0, "the birth month is not given");
    }
    if (horse.matureWeightKg().isEmpty()) {
      return new LifeStage("growth", "", age.getAsInt(), "the mature weight is not given");
    }
    Level level = horse.level();
    if (isTraining(level)) {
      return new LifeStage("growth", level.code(), age.getAsInt(), "");
    }
    return level == Level.NONE || level == Level.AVERAGE
        ? new LifeStage("growth", "untrained", age.getAsInt(), "")
        : unknownLevel("growth", level);
  }

  private static boolean isTraining(Level level) {
    return level == Level.LIGHT
        || level == Level.MODERATE
        || level == Level.HEAVY
        || level == Level.VERY_HEAVY;
  }

  private static LifeStage unknownLevel(String life, Level level) {
    String found = level == Level.NONE ? "blank" : level.code();
    return new LifeStage(life, "", 0, "the level \"" + found + "\" does not belong to " + life);
  }

  /** In words for a page: {@code gestation, month 9}. */
  public String words() {
    String unit = life.equals("growth") ? ", age in months " : ", month ";
    return life + (level.isEmpty() ? "" : ", " + level) + (month == 0 ? "" : unit + month);
  }
}
