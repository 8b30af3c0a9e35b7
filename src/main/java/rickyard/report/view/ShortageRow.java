package rickyard.report.view;

import java.util.List;

/**
 * A row of shortage.csv: a group whose horses need more cleared hay than there is, kg as fed.
 *
 * @param group empty for horses that need no cleared hay
 * @param horses that go without for some of the time
 * @param runsOutOn the day on which it runs out if shared alike, an ISO date
 * @param days the horizon
 */
public record ShortageRow(
    String group,
    List<String> horses,
    double neededKg,
    double foundKg,
    String why,
    String runsOutOn,
    double days) {
  public ShortageRow {
    horses = List.copyOf(horses);
  }

  public double shortKg() {
    return neededKg - foundKg;
  }
}
