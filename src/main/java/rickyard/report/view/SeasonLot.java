package rickyard.report.view;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A lot with an analysis in force, as the tables of the season count it.
 *
 * @param lot its id
 * @param material grass-hay …; empty if nobody says
 * @param holder client id or co-op; empty for a lot that no register knows
 * @param laboratory whose tests are in force; empty if none is named
 * @param year of harvest; empty if not known
 * @param month of sampling, YYYY-MM; empty if not known
 * @param contents by analyte
 * @param suits groups it clears for
 * @param notFor groups whose limits it exceeds
 * @param undecided groups it was judged for and neither clears nor exceeds
 */
public record SeasonLot(
    String lot,
    String material,
    String holder,
    String laboratory,
    String year,
    String month,
    SortedMap<String, Content> contents,
    List<String> suits,
    List<String> notFor,
    List<String> undecided) {

  /** A content with its unit and basis in words of the tables, for example {@code % DM}. */
  public record Content(double value, String unit) {}

  public SeasonLot {
    contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
    suits = List.copyOf(suits);
    notFor = List.copyOf(notFor);
    undecided = List.copyOf(undecided);
  }
}
