package rickyard.core.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationAmounts;
import rickyard.core.nutrition.Rations;
import rickyard.core.nutrition.WeighedMeasure;

/** How much of each lot every horse takes: today, as it will be fed, and on the days before. */
public final class Consumption {
  private Consumption() {}

  /**
   * Kilograms as fed per day by lot, client and horse.
   *
   * @param horses all horses
   * @param rations all rations
   * @param deliveries all deliveries
   * @param measures all measures
   * @param larder what can be fed
   */
  public static HayUse perDay(
      Collection<Horse> horses,
      List<Ration> rations,
      List<Delivery> deliveries,
      List<WeighedMeasure> measures,
      Larder larder,
      FeedingStandards standards,
      LocalDate asOf) {
    List<HayUse.Taken> today = new ArrayList<>();
    List<HayUse.Taken> coming = new ArrayList<>();
    Map<String, List<Ration>> byHorse =
        rations.stream().collect(Collectors.groupingBy(Ration::horseId));
    List<HayEaten.Span> eaten = new ArrayList<>();
    for (Horse horse : horses) {
      eaten.addAll(
          new FedBefore(horse, larder, deliveries, asOf)
              .spans(
                  byHorse.getOrDefault(horse.id(), List.of()),
                  r ->
                      RationAmounts.of(horse, r, larder::find, measures, asOf, standards)
                          .portions()));
      Rations.inForce(byHorse.getOrDefault(horse.id(), List.of()), asOf)
          .map(r -> RationAmounts.of(horse, r, larder::find, measures, asOf, standards))
          .ifPresent(
              amounts -> {
                add(horse, amounts.portions(), larder, today);
                add(
                    horse,
                    ComingRation.of(
                            horse.clientId(),
                            amounts.portions(),
                            deliveries,
                            lot -> larder.find(lot, ""),
                            asOf,
                            standards)
                        .portions(),
                    larder,
                    coming);
              });
    }
    return HayUse.of(coming, today, HayEaten.of(eaten));
  }

  private static void add(
      Horse horse, List<Portion> portions, Larder larder, List<HayUse.Taken> taken) {
    for (Portion portion : portions) {
      String lot = portion.food().id();
      if (larder.findLot(lot).isPresent()) {
        taken.add(new HayUse.Taken(horse.id(), horse.clientId(), lot, portion.kgAsFed()));
      }
    }
  }
}
