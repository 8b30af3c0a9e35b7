package rickyard.morning;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.view.CoOpView;

/** How the co-op's hay would be shared out; reads the office, writes nothing. */
public final class OfficeShare {
  private OfficeShare() {}

  /**
   * The sharing of a day.
   *
   * @param units kg or lb, of the scale
   * @param progress told what had to be mended in the ledger
   */
  public static CoOpView of(
      OfficeFolders folders, LocalDate asOf, String units, Progress progress) {
    Desk desk = Desk.open(folders, new Options(units, new TreeSet<>()), asOf, progress);
    List<HorseAdvice> advice = desk.pipeline().horseIds().stream().map(desk::advise).toList();
    return CoOpRows.of(desk.pipeline().share(desk.morning(), desk.judged(), advice));
  }
}
