package rickyard.core.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rickyard.core.nutrition.Delivery;

/**
 * What is left of hay that was delivered: all that is said of a pile at a client's rests on this.
 * What the client's horses were fed of it since the first delivery that is not used up was opened
 * is off.
 */
public final class DeliveredHay {
  private final Map<Place, List<Delivery>> deliveries;
  private final HayEaten eaten;
  private final LocalDate asOf;

  /** A lot at a client's. */
  private record Place(String lot, String client) {}

  /**
   * @param deliveries of all lots to all clients; later ones do not count
   * @param eaten what was fed before
   */
  public DeliveredHay(List<Delivery> deliveries, HayEaten eaten, LocalDate asOf) {
    this.deliveries =
        deliveries.stream()
            .filter(d -> !d.deliveredOn().isAfter(asOf))
            .collect(Collectors.groupingBy(d -> new Place(d.lotId(), d.clientId())));
    this.eaten = eaten;
    this.asOf = asOf;
  }

  /** Whether a client was delivered the lot and has not used it up. */
  public boolean isThere(String lot, String client) {
    return !there(lot, client).isEmpty();
  }

  /** Whether a client ever was delivered the lot. */
  boolean wasThere(String lot, String client) {
    return deliveries.containsKey(new Place(lot, client));
  }

  /** Deliveries of a lot to a client that are not used up. */
  public List<Delivery> there(String lot, String client) {
    return deliveries.getOrDefault(new Place(lot, client), List.of()).stream()
        .filter(d -> d.finishedOn().filter(day -> !day.isAfter(asOf)).isEmpty())
        .toList();
  }

  /** Whether something of a lot is open at a client's of which no ration ever fed. */
  public boolean isOpenAndUneaten(String lot, String client) {
    Optional<LocalDate> opened = firstOpened(there(lot, client));
    return opened.isPresent() && !(eaten.kg(lot, client, opened.get(), asOf) > 0);
  }

  /**
   * Kilograms as fed that are left.
   *
   * @return empty where nobody knows how much was delivered, or something is open and no ration
   *     says who ate of it; then what is still closed counts
   */
  public OptionalDouble left(String lot, String client) {
    List<Delivery> there = there(lot, client);
    if (there.stream().anyMatch(d -> d.kg().isEmpty())) {
      return OptionalDouble.empty();
    }
    double closed = kg(there.stream().filter(d -> opened(d).isEmpty()).toList());
    if (isOpenAndUneaten(lot, client)) {
      return closed > 0 ? OptionalDouble.of(closed) : OptionalDouble.empty();
    }
    double open = kg(there.stream().filter(d -> opened(d).isPresent()).toList());
    double off = firstOpened(there).map(day -> eaten.kg(lot, client, day, asOf)).orElse(0.0);
    return OptionalDouble.of(Math.max(0, open - off) + closed);
  }

  private Optional<LocalDate> firstOpened(List<Delivery> there) {
    return there.stream().flatMap(d -> opened(d).stream()).min(LocalDate::compareTo);
  }

  private Optional<LocalDate> opened(Delivery delivery) {
    return delivery.openedOn().or(delivery::opensOn).filter(day -> day.isBefore(asOf));
  }

  private static double kg(List<Delivery> deliveries) {
    return deliveries.stream().mapToDouble(d -> d.kg().orElse(0)).sum();
  }
}
