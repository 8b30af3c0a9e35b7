package rickyard.core.nutrition;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which of a horse's rations is fed. */
public final class Rations {
  private Rations() {}

  /** The ration in force at a day: the newest whose {@code since} is not after it. */
  public static Optional<Ration> inForce(List<Ration> ofOneHorse, LocalDate asOf) {
    return ofOneHorse.stream()
        .filter(r -> !r.since().isAfter(asOf))
        .max(Comparator.comparing(Ration::since));
  }

  /** Rations planned for later days, the next one first. */
  public static List<Ration> planned(List<Ration> ofOneHorse, LocalDate asOf) {
    return ofOneHorse.stream()
        .filter(r -> r.since().isAfter(asOf))
        .sorted(Comparator.comparing(Ration::since))
        .toList();
  }
}
