package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the horses of each client were fed of each lot on the days behind a morning: the rations
 * that were in force on each day, of horses that eat something else today too.
 */
public final class HayEaten {
  /** Nothing was eaten. */
  public static final HayEaten NONE = of(List.of());

  private final Map<Place, List<Span>> spans = new HashMap<>();

  private record Place(String lot, String client) {}

  /**
   * Days on which a horse was fed of a lot.
   *
   * @param from first day
   * @param until the day after the last
   * @param kgPerDay as fed, at least 0
   */
  public record Span(String client, String lot, LocalDate from, LocalDate until, double kgPerDay) {
    public Span {
      requireNonNull(from, "from");
      requireNonNull(until, "until");
    }

    private double kg(LocalDate first, LocalDate end) {
      LocalDate start = from.isAfter(first) ? from : first;
      LocalDate stop = until.isBefore(end) ? until : end;
      return stop.isAfter(start) ? kgPerDay * ChronoUnit.DAYS.between(start, stop) : 0;
    }
  }

  private HayEaten() {}

  /** Gathers what each horse was fed. */
  public static HayEaten of(List<Span> spans) {
    HayEaten eaten = new HayEaten();
    for (Span span : spans) {
      eaten
          .spans
          .computeIfAbsent(new Place(span.lot(), span.client()), p -> new ArrayList<>())
          .add(span);
    }
    return eaten;
  }

  /**
   * Kilograms as fed.
   *
   * @param first the first day that counts
   * @param end the day after the last
   */
  public double kg(String lot, String client, LocalDate first, LocalDate end) {
    return spans.getOrDefault(new Place(lot, client), List.of()).stream()
        .mapToDouble(span -> span.kg(first, end))
        .sum();
  }
}
