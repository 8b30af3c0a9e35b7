package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One test of one lot, whether it counts alone, was combined with others, or is disputed by them.
 * Replaced, withdrawn and preliminary reports, copies and what waits for an answer are no tests.
 *
 * @param key which sample
 * @param lot the lot it belongs to
 * @param lab the laboratory's name as printed; empty if none
 * @param material the material in the report's words; empty if not said
 * @param sampledOn the day of sampling, if printed
 * @param reportedOn the day of issue, if printed
 * @param analysis the values of this test alone
 */
public record LotTest(
    SampleKey key,
    String lot,
    String lab,
    String material,
    Optional<LocalDate> sampledOn,
    Optional<LocalDate> reportedOn,
    AccountedAnalysis analysis) {

  public LotTest {
    requireNonNull(key, "key");
    requireNonNull(lot, "lot");
    requireNonNull(lab, "lab");
    requireNonNull(material, "material");
    requireNonNull(sampledOn, "sampledOn");
    requireNonNull(reportedOn, "reportedOn");
    requireNonNull(analysis, "analysis");
  }

  static LotTest of(Held held, String lot, AccountedAnalysis analysis) {
    return new LotTest(
        held.key,
        lot,
        held.report.lab(),
        held.sample.material(),
        held.sample.sampledOn(),
        held.report.reportedOn(),
        analysis);
  }

  /** The day of sampling, else of the report. */
  public Optional<LocalDate> day() {
    return sampledOn.or(() -> reportedOn);
  }

  /** How a value was obtained; a sum as its soluble part was. */
  public Method method(AnalyteCode code) {
    AnalyteCode asked =
        code.equals(AnalyteCode.NSC_WSC)
            ? AnalyteCode.WSC
            : code.equals(AnalyteCode.NSC_ESC) ? AnalyteCode.ESC : code;
    Method own = analysis.methods().get(code);
    Method part = analysis.methods().get(asked);
    return part != null ? part : own != null ? own : Method.UNKNOWN;
  }
}
