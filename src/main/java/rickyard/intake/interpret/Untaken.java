package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import rickyard.core.quantity.Place;

/** A line that was seen and not taken: {@code why} is unknown-label, other-energy or share. */
public record Untaken(Place place, String text, String why) implements Serializable {
  public Untaken {
    requireNonNull(place, "place");
    requireNonNull(text, "text");
    requireNonNull(why, "why");
  }
}
