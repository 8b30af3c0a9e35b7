package rickyard.report.view;

import java.util.List;

/** A row of shortage.csv: a group whose horses need more cleared hay than there is, kg as fed. */
public record ShortageRow(
    String group, List<String> horses, double neededKg, double foundKg, String why) {
  public ShortageRow {
    horses = List.copyOf(horses);
  }
}
