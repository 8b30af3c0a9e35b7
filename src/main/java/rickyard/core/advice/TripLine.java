package rickyard.core.advice;

import java.io.Serializable;
import java.time.LocalDate;

/**
 * An item on a day of a trip plan.
 *
 * @param day of the calendar
 * @param phase before, away or back
 * @param item lot or feed id
 * @param kg as fed
 * @param batch of a feed; empty otherwise
 * @param name as people call it
 * @param role forage, controlled-forage, balancer …
 */
public record TripLine(
    LocalDate day, String phase, String item, double kg, String batch, String name, String role)
    implements Serializable {
  /** A line of an item that has no other name. */
  public TripLine(LocalDate day, String phase, String item, double kg) {
    this(day, phase, item, kg, "", item, "");
  }

  /** Days at home on which the forage for the journey is raised. */
  public static final String BEFORE = "before";

  /** Days of the trip. */
  public static final String AWAY = "away";

  /** Days at home on which it comes back to its hay. */
  public static final String BACK = "back";
}
