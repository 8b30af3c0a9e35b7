package rickyard.morning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.report.view.LotRow;

/** Lots by suitability as the only forage; needs reports only. */
public final class OfficeSort {
  private OfficeSort() {}

  /**
   * The lots, the most suitable first.
   *
   * @param group a group that must be known; the order is the same without it
   * @param progress told what had to be mended in the ledger
   */
  public static List<LotRow> of(
      OfficeFolders folders, LocalDate asOf, Optional<String> group, Progress progress) {
    Desk desk = Desk.open(folders, new Options("kg", new TreeSet<>()), asOf, progress);
    group.ifPresent(g -> requireGroup(desk, g));
    Places places = new Places(desk.morning().files());
    return new LotRows(desk.inputs(), desk.morning(), desk.judged(), places).rows();
  }

  private static void requireGroup(Desk desk, String group) {
    var known = desk.inputs().tables().judgement().conditions().groups();
    if (!known.contains(group)) {
      throw new UsageException(
          "There is no group \"" + group + "\"; groups are " + String.join(", ", known) + ".");
    }
  }
}
