package rickyard.core.nutrition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rickyard.core.quantity.Cites;

/**
 * A ration as it will be fed: deliveries that replace a lot, are not finished, and open on a blank
 * day, in the past or within the configured days take the place of that lot.
 *
 * @param portions the ration after the replacements, in the order of the register
 * @param replacements what took whose place, in the order of opening
 * @param withoutValue lots that should take a place but whose dry matter nobody knows, sorted; the
 *     old lot then still stands in {@code portions} and the horse cannot be judged
 */
public record ComingRation(
    List<Portion> portions, List<Replacement> replacements, List<String> withoutValue) {

  public ComingRation {
    portions = List.copyOf(portions);
    replacements = List.copyOf(replacements);
    withoutValue = withoutValue.stream().sorted().distinct().toList();
  }

  public boolean isChanged() {
    return !replacements.isEmpty();
  }

  /**
   * Applies the deliveries of a client to one of its horses' rations.
   *
   * @param clientId whose horse it is; deliveries to others do not count
   * @param portions the ration in force
   * @param deliveries of any client, in any order
   * @param lots the foodstuff of a lot, if its dry matter is known
   */
  public static ComingRation of(
      String clientId,
      List<Portion> portions,
      List<Delivery> deliveries,
      Function<String, Optional<Foodstuff>> lots,
      LocalDate asOf,
      FeedingStandards standards) {
    long within = (long) standards.settings().number("opens_within_days");
    List<Delivery> counting =
        deliveries.stream()
            .filter(d -> d.clientId().equals(clientId))
            .filter(d -> counts(d, asOf, within))
            .sorted(
                Comparator.comparing(ComingRation::opening)
                    .thenComparing(Delivery::deliveredOn)
                    .thenComparing(Delivery::lotId))
            .toList();
    List<Portion> now = new ArrayList<>(portions);
    List<Replacement> done = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    counting.forEach(d -> apply(d, now, lots, done, unknown));
    return new ComingRation(now, done, unknown);
  }

  private static LocalDate opening(Delivery delivery) {
    return delivery.openedOn().or(delivery::opensOn).orElse(delivery.deliveredOn());
  }

  private static boolean counts(Delivery delivery, LocalDate asOf, long within) {
    boolean isFinished = delivery.finishedOn().map(day -> !day.isAfter(asOf)).orElse(false);
    boolean opensSoon = !opening(delivery).isAfter(asOf.plusDays(within));
    return delivery.replaces().isPresent() && !isFinished && opensSoon;
  }

  private static void apply(
      Delivery delivery,
      List<Portion> now,
      Function<String, Optional<Foodstuff>> lots,
      List<Replacement> done,
      List<String> unknown) {
    String old = delivery.replaces().orElseThrow();
    boolean isOpeningKnown = delivery.opensOn().isPresent() || delivery.openedOn().isPresent();
    for (int i = 0; i < now.size(); i++) {
      Portion portion = now.get(i);
      if (!portion.food().id().equals(old) || delivery.lotId().equals(old)) {
        continue;
      }
      Optional<Foodstuff> lot = lots.apply(delivery.lotId());
      if (lot.isEmpty()) {
        unknown.add(delivery.lotId());
        continue;
      }
      Portion changed = atEqualDryMatter(portion, lot.get());
      now.set(i, changed);
      done.add(new Replacement(delivery, portion.kgAsFed(), changed.kgAsFed(), isOpeningKnown));
    }
  }

  /** The same dry matter from another foodstuff: {@code kg = kg_old x DM_old / DM_new}. */
  @Cites(source = "definition", locator = "dry matter = 100 - moisture, % as fed")
  public static Portion atEqualDryMatter(Portion portion, Foodstuff food) {
    double factor = portion.food().dryMatter().best() / food.dryMatter().best();
    return new Portion(
        food,
        portion.kgAsFed() * factor,
        portion.kgU() * factor,
        portion.asForage(),
        portion.meals(),
        portion.prepared());
  }
}
