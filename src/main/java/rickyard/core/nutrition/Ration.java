package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;

/**
 * What a horse is given per day from a date on: the rows of the register with one {@code since}.
 */
public record Ration(String horseId, LocalDate since, List<RationItem> items) {
  public Ration {
    requireNonNull(horseId, "horseId");
    requireNonNull(since, "since");
    items = List.copyOf(items);
  }
}
