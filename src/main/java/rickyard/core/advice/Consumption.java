package rickyard.core.advice;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationAmounts;
import rickyard.core.nutrition.Rations;
import rickyard.core.nutrition.WeighedMeasure;

/** How much of each lot all horses together take per day, as they will be fed. */
public final class Consumption {
  private Consumption() {}

  /**
   * Kilograms as fed per day by lot.
   *
   * @param horses all horses
   * @param rations all rations
   * @param deliveries all deliveries
   * @param measures all measures
   * @param larder what can be fed
   */
  public static SortedMap<String, Double> perDay(
      Collection<Horse> horses,
      List<Ration> rations,
      List<Delivery> deliveries,
      List<WeighedMeasure> measures,
      Larder larder,
      FeedingStandards standards,
      LocalDate asOf) {
    SortedMap<String, Double> use = new TreeMap<>();
    for (Horse horse : horses) {
      List<Ration> own = rations.stream().filter(r -> r.horseId().equals(horse.id())).toList();
      Rations.inForce(own, asOf)
          .map(r -> RationAmounts.of(horse, r, larder::find, measures, asOf, standards))
          .map(
              amounts ->
                  ComingRation.of(
                      horse.clientId(),
                      amounts.portions(),
                      deliveries,
                      lot -> larder.find(lot, ""),
                      asOf,
                      standards))
          .ifPresent(coming -> coming.portions().forEach(p -> add(p, larder, use)));
    }
    return use;
  }

  private static void add(Portion portion, Larder larder, SortedMap<String, Double> use) {
    if (larder.findLot(portion.food().id()).isPresent()) {
      use.merge(portion.food().id(), portion.kgAsFed(), Double::sum);
    }
  }
}
