package rickyard.core.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationItem;
import rickyard.core.nutrition.WeighedMeasure;

/**
 * What a horse is given, in kilograms: the ration in force with measures weighed out, and the lots
 * that deliveries put in the place of others.
 */
final class RationBook {
  private static final double KG_PER_LB = 0.45359237;

  private final List<Ration> rations;
  private final List<Delivery> deliveries;
  private final List<WeighedMeasure> measures;
  private final FeedingStandards standards;
  private final LocalDate asOf;

  RationBook(
      List<Ration> rations,
      List<Delivery> deliveries,
      List<WeighedMeasure> measures,
      FeedingStandards standards,
      LocalDate asOf) {
    this.rations = List.copyOf(rations);
    this.deliveries = List.copyOf(deliveries);
    this.measures = List.copyOf(measures);
    this.standards = standards;
    this.asOf = asOf;
  }

  /**
   * A ration weighed out.
   *
   * @param portions what could be weighed
   * @param problems what could not, one sentence each
   */
  record Weighed(List<Portion> portions, List<String> problems) {}

  /** The newest ration whose first day is not after the morning's. */
  Optional<Ration> inForce(String horseId) {
    return rations.stream()
        .filter(r -> r.horseId().equals(horseId) && !r.since().isAfter(asOf))
        .max(Comparator.comparing(Ration::since));
  }

  /** The ration in kilograms as fed per day, with the values of a larder. */
  Weighed weigh(Ration ration, Horse horse, Larder larder) {
    List<Portion> portions = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    List<RationItem> free = new ArrayList<>();
    for (RationItem item : ration.items()) {
      Optional<Foodstuff> food = larder.find(item.item(), item.batch());
      if (food.isEmpty()) {
        problems.add(unknown(item, larder));
      } else if (item.unit().equals("ad-lib")) {
        free.add(item);
      } else {
        weigh(item, food.get(), horse, portions, problems);
      }
    }
    double weighedDm = portions.stream().mapToDouble(Portion::kgDm).sum();
    for (RationItem item : free) {
      larder
          .find(item.item(), item.batch())
          .ifPresent(food -> portions.add(adLib(item, food, horse, weighedDm, free.size())));
    }
    return new Weighed(List.copyOf(portions), List.copyOf(problems));
  }

  private static String unknown(RationItem item, Larder larder) {
    if (larder.findLot(item.item()).isPresent()) {
      return "lot "
          + item.item()
          + " has no dry matter, neither from a report nor typical of its material";
    }
    return "item "
        + item.item()
        + (item.batch().isEmpty() ? "" : " batch " + item.batch())
        + " of its ration is in no register, or its batch is not said";
  }

  private void weigh(
      RationItem item, Foodstuff food, Horse horse, List<Portion> portions, List<String> problems) {
    switch (item.unit()) {
      case "kg" -> portions.add(portion(item, food, item.amount(), 0));
      case "lb" -> portions.add(portion(item, food, item.amount() * KG_PER_LB, 0));
      case "pct_bw" ->
          portions.add(portion(item, food, item.amount() * horse.bodyWeightKg() / 100, 0));
      case "bale", "flake", "net", "scoop" -> measured(item, food, horse, portions, problems);
      default ->
          problems.add(
              "unit \""
                  + item.unit()
                  + "\" of item "
                  + item.item()
                  + " is none of kg, lb, pct_bw, ad-lib, bale, flake, net, scoop");
    }
  }

  private void measured(
      RationItem item, Foodstuff food, Horse horse, List<Portion> portions, List<String> problems) {
    Optional<WeighedMeasure> measure =
        measures.stream()
            .filter(m -> m.clientId().equals(horse.clientId()))
            .filter(m -> m.item().equals(item.item()) && m.measure().equals(item.unit()))
            .max(Comparator.comparing(m -> m.weighedOn().orElse(LocalDate.MIN)));
    if (measure.isEmpty()) {
      problems.add(
          "a "
              + item.unit()
              + " of "
              + item.item()
              + " was never weighed at client "
              + horse.clientId()
              + "; weigh one and enter it in measures.csv");
    } else {
      portions.add(portion(item, food, item.amount() * measure.get().kg(), 0));
    }
  }

  /** Fed without measure: the assumed total intake of its type, less what is weighed. */
  private Portion adLib(
      RationItem item, Foodstuff food, Horse horse, double weighedDm, int sharedBy) {
    IntakeRule rule = standards.intakeRule(horse);
    double totalDm = rule.adlib() * horse.bodyWeightKg() / 100;
    double asFed = Math.max(0, totalDm - weighedDm) / sharedBy / (food.dryMatter().best() / 100);
    return portion(item, food, asFed, totalDm * rule.adlibU() / food.dryMatter().best() / sharedBy);
  }

  private static Portion portion(RationItem item, Foodstuff food, double kg, double u) {
    return new Portion(food, kg, u, item.asForage(), item.meals());
  }

  /** Deliveries of a client that take another lot's place, in the order in which they open. */
  List<Delivery> replacing(String clientId) {
    int within = (int) standards.settings().number("opens_within_days");
    return deliveries.stream()
        .filter(d -> d.clientId().equals(clientId) && d.replaces().isPresent())
        .filter(d -> d.finishedOn().isEmpty() || d.finishedOn().get().isAfter(asOf))
        .filter(d -> !d.deliveredOn().isAfter(asOf.plusDays(within)))
        .filter(d -> d.opensOn().isEmpty() || !d.opensOn().get().isAfter(asOf.plusDays(within)))
        .sorted(
            Comparator.comparing((Delivery d) -> d.opensOn().orElse(d.deliveredOn()))
                .thenComparing(Delivery::deliveredOn)
                .thenComparing(Delivery::lotId))
        .toList();
  }

  /** The portions with each replaced lot changed for the delivered one, at equal dry matter. */
  List<Portion> replaced(List<Portion> portions, Delivery delivery, Larder larder) {
    Optional<Foodstuff> lot = larder.find(delivery.lotId(), "");
    String old = delivery.replaces().orElse("");
    List<Portion> changed = new ArrayList<>();
    for (Portion portion : portions) {
      if (lot.isPresent() && portion.food().id().equals(old)) {
        double ratio = portion.food().dryMatter().best() / lot.get().dryMatter().best();
        changed.add(
            new Portion(
                lot.get(),
                portion.kgAsFed() * ratio,
                portion.kgU() * ratio,
                portion.asForage(),
                portion.meals()));
      } else {
        changed.add(portion);
      }
    }
    return List.copyOf(changed);
  }
}
