package rickyard.core.advice.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.advice.DeliveredHay;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;

/**
 * Hay of one lot that one client still has: what it holds of the lot and what was delivered to it,
 * less what its horses were fed of it since that was opened. Where a register says no amount,
 * nothing is known.
 *
 * @param kg as fed
 * @param lastDay last day on which the horses that eat it get all of theirs
 */
public record HayLeft(double kg, LocalDate lastDay) {
  /** Hay that lasts longer than this many days lasts for good. */
  private static final long FOR_GOOD_DAYS = 3660;

  /** Days from a day on, that day and the last one counted; none if it has run out before. */
  public long daysFrom(LocalDate day) {
    return Math.max(0, ChronoUnit.DAYS.between(day, lastDay) + 1);
  }

  /**
   * What is left, where the registers say how much there was.
   *
   * @param kgPerDay that the client's horses eat of it, as fed, above 0
   */
  static Optional<HayLeft> of(
      DeliveredHay delivered, Lot lot, String client, double kgPerDay, LocalDate asOf) {
    List<Delivery> there = delivered.there(lot.id(), client);
    OptionalDouble left = delivered.left(lot.id(), client);
    boolean isOwn = lot.holder().equals(client);
    boolean isKnown = isOwn ? lot.stockKg().isPresent() : !there.isEmpty();
    if (!isKnown || left.isEmpty() || !(kgPerDay > 0)) {
      return Optional.empty();
    }
    double kg = (isOwn ? lot.stockKg().orElse(0) : 0) + left.getAsDouble();
    LocalDate start = isOwn ? asOf : start(there, asOf);
    long days = (long) Math.floor(kg / kgPerDay);
    return days > FOR_GOOD_DAYS
        ? Optional.empty()
        : Optional.of(new HayLeft(kg, start.plusDays(days - 1)));
  }

  /** Hay that none is open of lasts from the day on which it will be opened. */
  private static LocalDate start(List<Delivery> there, LocalDate asOf) {
    return there.stream()
        .map(d -> d.openedOn().or(d::opensOn).orElse(asOf))
        .min(LocalDate::compareTo)
        .filter(day -> day.isAfter(asOf))
        .orElse(asOf);
  }
}
