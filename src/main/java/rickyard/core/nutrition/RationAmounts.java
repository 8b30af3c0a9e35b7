package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Pound;

/**
 * A ration of the register in kg as fed per day.
 *
 * @param portions the items whose amount is known, in the order of the register
 * @param problems why the others are not; empty if the ration is complete
 */
public record RationAmounts(List<Portion> portions, List<AmountProblem> problems) {
  private static final List<String> MEASURES = List.of("bale", "flake", "net", "scoop");

  public RationAmounts {
    portions = List.copyOf(portions);
    problems = List.copyOf(problems);
  }

  /** Whether every item is known in kg: only then can the horse be judged. */
  public boolean isComplete() {
    return problems.isEmpty();
  }

  /**
   * Resolves the units of a ration: kg, lb, {@code pct_bw} (kg as fed per 100 kg of the register's
   * body weight), bale, flake, net and scoop through what one weighs at the client's yard, and
   * {@code ad-lib} through the intake that the tables assume for the type, less what is weighed.
   *
   * @param horse whose
   * @param ration the rows in force
   * @param foods the foodstuff of an item and batch, if it is known
   * @param measures what measures weigh; an empty client id holds for every client, the newest not
   *     after {@code asOf} counts, one without a date before any other
   * @param asOf the day
   */
  public static RationAmounts of(
      Horse horse,
      Ration ration,
      BiFunction<String, String, Optional<Foodstuff>> foods,
      List<WeighedMeasure> measures,
      LocalDate asOf,
      FeedingStandards standards) {
    List<Slot> slots = new ArrayList<>();
    List<AmountProblem> problems = new ArrayList<>();
    for (RationItem item : ration.items()) {
      Optional<Foodstuff> food = foods.apply(item.item(), item.batch());
      if (food.isEmpty()) {
        problems.add(AmountProblem.unknownItem(horse, item));
        continue;
      }
      OptionalDouble kg = kg(horse, item, measures, asOf, problems);
      if (kg.isPresent() || item.unit().equals("ad-lib")) {
        slots.add(new Slot(item, food.get(), kg));
      }
    }
    return new RationAmounts(fill(slots, horse, standards), problems);
  }

  private record Slot(RationItem item, Foodstuff food, OptionalDouble kg) {}

  @Cites(source = "definition", locator = "international pound; pct_bw per 100 kg of body weight")
  private static OptionalDouble kg(
      Horse horse,
      RationItem item,
      List<WeighedMeasure> measures,
      LocalDate asOf,
      List<AmountProblem> problems) {
    String unit = item.unit();
    if (MEASURES.contains(unit)) {
      Optional<WeighedMeasure> measure = newest(horse.clientId(), item, measures, asOf);
      if (measure.isEmpty()) {
        problems.add(AmountProblem.notWeighed(horse, item));
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(item.amount() * measure.get().kg());
    }
    return switch (unit) {
      case "kg" -> OptionalDouble.of(item.amount());
      case "lb" -> OptionalDouble.of(item.amount() * Pound.KG);
      case "pct_bw" -> OptionalDouble.of(item.amount() * horse.bodyWeightKg() / 100);
      case "ad-lib" -> OptionalDouble.empty();
      default -> {
        problems.add(AmountProblem.unknownUnit(horse, item));
        yield OptionalDouble.empty();
      }
    };
  }

  private static Optional<WeighedMeasure> newest(
      String clientId, RationItem item, List<WeighedMeasure> measures, LocalDate asOf) {
    return measures.stream()
        .filter(m -> m.item().equals(item.item()) && m.measure().equals(item.unit()))
        .filter(m -> m.clientId().equals(clientId) || m.clientId().isEmpty())
        .filter(m -> m.weighedOn().map(day -> !day.isAfter(asOf)).orElse(true))
        .filter(m -> Double.isFinite(m.kg()) && m.kg() > 0)
        .max(
            Comparator.comparing((WeighedMeasure m) -> m.clientId().equals(clientId))
                .thenComparing(m -> m.weighedOn().orElse(LocalDate.MIN))
                .thenComparing(WeighedMeasure::kg));
  }

  private static List<Portion> fill(List<Slot> slots, Horse horse, FeedingStandards standards) {
    double weighed = 0;
    int open = 0;
    for (Slot slot : slots) {
      weighed += slot.kg.orElse(0) * slot.food.dryMatter().best() / 100;
      open += slot.kg.isEmpty() ? 1 : 0;
    }
    IntakeRule rule = standards.intakeRule(horse);
    double wanted = rule.adlib() / 100 * horse.bodyWeightKg();
    double eachDm = open == 0 ? 0 : Math.max(0, wanted - weighed) / open;
    double eachU = open == 0 ? 0 : wanted * rule.adlibU() / 100 / open;
    return slots.stream().map(slot -> portion(slot, eachDm, eachU)).toList();
  }

  private static Portion portion(Slot slot, double adlibDm, double adlibU) {
    double toAsFed = 100 / slot.food.dryMatter().best();
    RationItem item = slot.item;
    return new Portion(
        requireNonNull(slot.food),
        slot.kg.orElse(adlibDm * toAsFed),
        slot.kg.isPresent() ? 0 : adlibU * toAsFed,
        item.asForage(),
        item.meals(),
        item.prepared());
  }
}
