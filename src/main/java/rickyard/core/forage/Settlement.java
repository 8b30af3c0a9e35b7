package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.Map;

/**
 * Settles what intake read: revisions, copies, belonging, retests, answers and corrections.
 *
 * <p>A function of its arguments: the order in which reports arrived, or stand in the list, changes
 * no decision. The newest revision counts; a withdrawal takes away; a preliminary report never
 * decides; a label that is not exactly a lot's id is a question; tests of one lot that agree are
 * combined, tests that do not leave the lot without an analysis until a person decides.
 */
public final class Settlement {
  private final AnalysisMaker maker;
  private final Map<AnalyteCode, Analyte> analytes;
  private final SampleKinds kinds;

  /** A settlement that knows no words for what is not hay. */
  public Settlement(AnalysisMaker maker, Map<AnalyteCode, Analyte> analytes) {
    this(maker, analytes, SampleKinds.none());
  }

  /**
   * @param maker makes the analysis of a sample
   * @param analytes the dictionary, for canonical units of answered figures
   * @param kinds what reports call a sample: hay, or something else
   */
  public Settlement(AnalysisMaker maker, Map<AnalyteCode, Analyte> analytes, SampleKinds kinds) {
    this.maker = requireNonNull(maker, "maker");
    this.analytes = Map.copyOf(analytes);
    this.kinds = requireNonNull(kinds, "kinds");
  }

  /** Settles everything. */
  public Settled settle(Unsettled unsettled) {
    return new SettlementRun(unsettled, maker, analytes, kinds).run();
  }
}
