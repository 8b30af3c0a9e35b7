package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;

/**
 * What a horse is fed before a trip, on it and after it: forage from the bag is raised before, fed
 * away, and goes down again after.
 *
 * @param from first day of the trip
 * @param to last day of it
 * @param lines by day, then by item; empty where no plan could be made
 * @param words what must be said with it, in order
 */
public record TripPlan(LocalDate from, LocalDate to, List<TripLine> lines, List<String> words)
    implements Serializable {
  public TripPlan {
    requireNonNull(from, "from");
    requireNonNull(to, "to");
    lines = List.copyOf(lines);
    words = List.copyOf(words);
  }

  /** What is fed on a day by the plan; empty where the plan changes nothing on it. */
  public List<TripLine> on(LocalDate day) {
    return lines.stream().filter(l -> l.day().equals(day)).toList();
  }
}
