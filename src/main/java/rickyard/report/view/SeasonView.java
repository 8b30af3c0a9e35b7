package rickyard.report.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.core.season.OverTime;

/**
 * The lots and tests of all mornings taken together.
 *
 * @param quantities codes of what is counted, the first of them first on the page
 * @param lots sorted by id
 * @param overTime tests beside each other; empty where nobody looked
 */
public record SeasonView(
    List<String> quantities, List<SeasonLot> lots, Optional<OverTime> overTime) {

  public SeasonView {
    quantities = List.copyOf(quantities);
    lots = lots.stream().sorted(Comparator.comparing(SeasonLot::lot)).toList();
  }

  /** Nothing to take together. */
  public static SeasonView none() {
    return new SeasonView(List.of(), List.of(), Optional.empty());
  }
}
