package rickyard.core.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;

/**
 * What one horse was fed on the days behind a morning. Each ration holds until the next; the first
 * on record counts before its day too, since a horse ate something. Where a delivery that was
 * opened took the place of a lot, it did so from that day on.
 */
final class FedBefore {
  private final Horse horse;
  private final Larder larder;
  private final List<Delivery> taking;
  private final LocalDate asOf;
  private final List<HayEaten.Span> spans = new ArrayList<>();

  /**
   * @param deliveries of any client
   */
  FedBefore(Horse horse, Larder larder, List<Delivery> deliveries, LocalDate asOf) {
    this.horse = horse;
    this.larder = larder;
    this.asOf = asOf;
    this.taking =
        deliveries.stream()
            .filter(d -> d.clientId().equals(horse.clientId()))
            .filter(d -> d.replaces().filter(r -> !r.equals(d.lotId())).isPresent())
            .filter(d -> opened(d).filter(day -> day.isBefore(asOf)).isPresent())
            .sorted(Comparator.comparing(d -> opened(d).orElse(asOf)))
            .toList();
  }

  private static Optional<LocalDate> opened(Delivery delivery) {
    return delivery.openedOn().or(delivery::opensOn);
  }

  /**
   * The spans of all rations of the horse.
   *
   * @param weighed the portions of a ration
   */
  List<HayEaten.Span> spans(List<Ration> rations, Function<Ration, List<Portion>> weighed) {
    List<Ration> past =
        rations.stream()
            .filter(r -> !r.since().isAfter(asOf))
            .sorted(Comparator.comparing(Ration::since))
            .toList();
    for (int i = 0; i < past.size(); i++) {
      LocalDate from = i == 0 ? LocalDate.MIN : past.get(i).since();
      LocalDate until = i + 1 < past.size() ? past.get(i + 1).since() : asOf;
      weighed.apply(past.get(i)).forEach(portion -> add(portion, from, until));
    }
    return List.copyOf(spans);
  }

  /** A portion on its days, with what took its place on some of them. */
  private void add(Portion portion, LocalDate from, LocalDate until) {
    LocalDate start = from;
    for (Delivery delivery : taking) {
      LocalDate day = opened(delivery).orElse(asOf);
      boolean takesPlace =
          delivery.replaces().orElse("").equals(portion.food().id()) && day.isBefore(until);
      if (takesPlace && larder.find(delivery.lotId(), "").isPresent()) {
        Portion taken =
            ComingRation.atEqualDryMatter(portion, larder.find(delivery.lotId(), "").orElseThrow());
        LocalDate first = day.isAfter(start) ? day : start;
        LocalDate end = delivery.finishedOn().filter(f -> f.isBefore(until)).orElse(until);
        span(portion, start, first);
        span(taken, first, end);
        start = end.isAfter(first) ? end : first;
      }
    }
    span(portion, start, until);
  }

  private void span(Portion portion, LocalDate from, LocalDate until) {
    String lot = portion.food().id();
    if (until.isAfter(from) && larder.findLot(lot).isPresent()) {
      spans.add(new HayEaten.Span(horse.clientId(), lot, from, until, portion.kgAsFed()));
    }
  }
}
