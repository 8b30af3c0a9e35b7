package rickyard.intake.check;

import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;

/** The figures on which a verdict may hang, and what two faults on one page mean for them. */
public final class Decisive {
  /** Code of a figure that waits because the page is wrong elsewhere. */
  static final String CODE = "page-in-doubt";

  /** One fault is a slip of one line; two make a page that cannot be trusted in a third. */
  private static final int FAULTS = 2;

  private static final List<AnalyteCode> CODES =
      List.of(
          AnalyteCode.WSC,
          AnalyteCode.ESC,
          AnalyteCode.STARCH,
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC,
          AnalyteCode.NO3,
          AnalyteCode.NO3_N,
          AnalyteCode.FE,
          AnalyteCode.SE,
          AnalyteCode.K);

  private Decisive() {}

  static List<AnalyteCode> in(Collection<AnalyteCode> present) {
    return CODES.stream().filter(present::contains).toList();
  }

  /**
   * What waits because of faults elsewhere on the page.
   *
   * @param present the analytes of the sample
   * @param checked its relations; each broken one that is no soft one is a fault
   * @param unusual how many of its figures are outside the usual range; each is a fault
   */
  public static SortedMap<AnalyteCode, String> held(
      Collection<AnalyteCode> present, Checked checked, long unusual) {
    SortedMap<AnalyteCode, String> held = new TreeMap<>();
    if (checked.faults() + unusual >= FAULTS) {
      in(present).forEach(c -> held.put(c, CODE));
    }
    return held;
  }
}
