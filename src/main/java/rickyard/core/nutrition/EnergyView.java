package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * Energy against the requirement and the body condition, in plain words: an average requirement
 * says little about one horse, its condition says more.
 *
 * @param code {@code energy-} short, even, over or unknown {@code -} thin, fit, fat or unseen
 * @param percentOfRequirement supply in % of the requirement, if both are known
 * @param words one sentence
 */
public record EnergyView(String code, OptionalDouble percentOfRequirement, String words) {

  private static final String NEVER_CUT =
      "; donkeys, miniatures, pregnant, lactating and sick animals are given less only with a vet"
          + " plan";

  public EnergyView {
    requireNonNull(code, "code");
    requireNonNull(percentOfRequirement, "percentOfRequirement");
    requireNonNull(words, "words");
  }

  /** Whether the condition on record is that of a horse that must gain. */
  public boolean isThin() {
    return code.endsWith("-thin");
  }

  /** Whether the condition on record is that of a horse that must lose weight. */
  public boolean isFat() {
    return code.endsWith("-fat");
  }

  /**
   * Reads the energy of a diet.
   *
   * @param mayCut whether the animal may be given less without asking a vet
   * @param isGrassLeftOut whether it grazes and the diet does not count the grass
   */
  static EnergyView of(
      NutrientLine energy, Horse horse, Settings settings, boolean mayCut, boolean isGrassLeftOut) {
    double even = settings.number("energy_even_pct");
    OptionalDouble known = energy.percentOfRequirement();
    boolean isSettled = energy.supply().isComplete() || known.orElse(0) > 100 + even;
    OptionalDouble percent = isSettled ? known : OptionalDouble.empty();
    String supply = supply(percent, even);
    String condition = condition(horse, settings);
    String words =
        words(supply, condition)
            + (condition.equals("fat") && !mayCut ? NEVER_CUT : "")
            + (isGrassLeftOut ? "; the grass is not counted" : "");
    return new EnergyView("energy-" + supply + "-" + condition, percent, words);
  }

  private static String supply(OptionalDouble percent, double even) {
    if (percent.isEmpty()) {
      return "unknown";
    }
    double off = percent.getAsDouble() - 100;
    if (Math.abs(off) <= even) {
      return "even";
    }
    return off < 0 ? "short" : "over";
  }

  private static String condition(Horse horse, Settings settings) {
    if (horse.bodyCondition().isEmpty()) {
      return "unseen";
    }
    double score = horse.bodyCondition().getAsDouble();
    if (score <= settings.number("condition_thin_at_most")) {
      return "thin";
    }
    return score >= settings.number("condition_fat_at_least") ? "fat" : "fit";
  }

  private static String words(String supply, String condition) {
    if (supply.equals("unknown")) {
      return "the energy of this diet is not known; go by weight and body condition";
    }
    String start =
        switch (supply) {
          case "short" -> "energy is under the average requirement";
          case "over" -> "energy is over the average requirement";
          default -> "energy is about the average requirement";
        };
    return start + ending(supply, condition);
  }

  private static String ending(String supply, String condition) {
    return switch (supply + "-" + condition) {
      case "short-thin" -> " and the horse is thin: it needs more";
      case "short-fat" -> " and the horse is fat: as a horse that must lose weight should have it";
      case "short-fit" -> ": a horse in fair condition may lose weight, weigh it again";
      case "over-thin" -> " and the horse is thin: as a horse that must gain should have it";
      case "over-fat" -> " and the horse is fat: it will gain more";
      case "over-fit" -> ": a horse in fair condition may gain weight, weigh it again";
      case "even-thin" -> " but the horse is thin: it may need more than the average";
      case "even-fat" -> " but the horse is fat: it keeps its weight on this";
      case "even-fit" -> " and the condition is fair";
      default -> "; its body condition is not on record: look at the horse";
    };
  }
}
