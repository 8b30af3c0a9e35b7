package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Part of a lot gone to a client; {@code replaces} is the lot whose place it takes, if any. */
public record Delivery(
    String lotId,
    String clientId,
    OptionalDouble kg,
    LocalDate deliveredOn,
    Optional<String> replaces,
    Optional<LocalDate> opensOn,
    Optional<LocalDate> openedOn,
    Optional<LocalDate> finishedOn) {

  public Delivery {
    requireNonNull(lotId, "lotId");
    requireNonNull(clientId, "clientId");
    requireNonNull(deliveredOn, "deliveredOn");
  }
}
