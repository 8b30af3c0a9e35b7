package rickyard.core.nutrition;

import java.time.LocalDate;
import java.util.Optional;

/** What one bale, flake, net or scoop of an item weighs at a client's yard, kg as fed. */
public record WeighedMeasure(
    String clientId, String item, String measure, double kg, Optional<LocalDate> weighedOn) {}
