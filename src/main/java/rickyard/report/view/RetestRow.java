package rickyard.report.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of retests.csv that comes from sharing: what a second test of a lot might free.
 *
 * @param rank from 1
 * @param groups that lack hay and for which it does not clear now
 * @param chance of clearing for any of them; null where unknown
 * @param freesKg kg as fed that would go to them if it cleared for all
 * @param expectedKg the mean over what the test may say; null where unknown
 */
public record RetestRow(
    int rank,
    String lot,
    List<String> groups,
    @Nullable Double chance,
    double freesKg,
    @Nullable Double expectedKg,
    String why) {
  public RetestRow {
    groups = List.copyOf(groups);
  }
}
