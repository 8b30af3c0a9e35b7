package rickyard.core.advice.coop;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;

/**
 * A group that needs more hay than there is for it, kg as fed until the horizon.
 *
 * @param group most sensitive group of the horses; empty for horses that need no cleared hay
 * @param horses of the group that go without for some of the time, sorted
 * @param neededKg of all horses of the group
 * @param foundKg for them
 * @param runsOutOn the first day on which the group's hay no longer does for all its horses, if all
 *     are fed until then
 * @param why in plain words
 */
public record ShortageLine(
    String group,
    List<String> horses,
    double neededKg,
    double foundKg,
    LocalDate runsOutOn,
    String why)
    implements Serializable {
  public ShortageLine {
    horses = List.copyOf(horses);
  }

  public double shortKg() {
    return neededKg - foundKg;
  }
}
