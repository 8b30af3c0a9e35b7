package rickyard.core.nutrition;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Register rows for tests. */
final class Rows {
  private Rows() {}

  static RationItem item(String id, double amount, String unit) {
    return new RationItem(id, "", amount, unit, true, OptionalInt.empty(), "dry");
  }

  static Ration ration(RationItem... items) {
    return new Ration("h1", Horses.DAY.minusDays(30), List.of(items));
  }

  static Delivery delivery(String lot, String replaces, Optional<LocalDate> opens) {
    return new Delivery(
        lot,
        "c1",
        OptionalDouble.empty(),
        Horses.DAY.minusDays(3),
        Optional.of(replaces),
        opens,
        Optional.empty(),
        Optional.empty());
  }
}
