package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/** Says what an analysis lacks for a limit, and what would settle it. */
final class Missing {
  private Missing() {}

  static String words(AccountedAnalysis analysis, Limit limit, JudgementSettings settings) {
    AnalyteCode code = limit.analyte();
    if (code.equals(AnalyteCode.NSC_WSC)) {
      return sum(analysis, limit, AnalyteCode.WSC, settings);
    }
    if (code.equals(AnalyteCode.NSC_ESC)) {
      return sum(analysis, limit, AnalyteCode.ESC, settings);
    }
    return part(analysis, code, limit.words())
        .orElse(limit.words() + " is not bounded by the report");
  }

  private static String sum(
      AccountedAnalysis analysis, Limit limit, AnalyteCode soluble, JudgementSettings settings) {
    List<String> lacks = new ArrayList<>();
    part(analysis, soluble, soluble.value()).ifPresent(lacks::add);
    part(analysis, AnalyteCode.STARCH, "starch").ifPresent(lacks::add);
    String withheld = analysis.whyLeftOut(limit.analyte());
    if (!withheld.isEmpty()) {
      lacks.add("printed NSC " + withheld);
    }
    String hint = soluble.equals(AnalyteCode.WSC) ? otherDefinition(analysis) : "";
    return String.join(", ", lacks)
        + hint
        + nfc(analysis, limit, settings)
        + "; a report with "
        + soluble
        + " and starch on dry matter would settle it";
  }

  /** Why a part is not there or not bounded; empty if it is. */
  private static Optional<String> part(AccountedAnalysis analysis, AnalyteCode code, String name) {
    Optional<Measured> value = analysis.analysis().find(code);
    if (value.isPresent()) {
      return value.get().isBoundedAbove()
          ? Optional.empty()
          : Optional.of(name + " is bounded from below only: dry matter is missing");
    }
    String why = analysis.whyLeftOut(code);
    return Optional.of(name + (why.isEmpty() ? " is not reported" : ": " + why));
  }

  private static String otherDefinition(AccountedAnalysis analysis) {
    boolean esc = analysis.analysis().find(AnalyteCode.ESC).isPresent();
    boolean wsc = analysis.analysis().find(AnalyteCode.WSC).isPresent();
    return esc && !wsc ? " (ESC + starch is only a lower bound of WSC + starch)" : "";
  }

  /**
   * NFC holds WSC + starch and more, but is a difference with the error of four analyses: WSC +
   * starch may lie over it by some points (the allowance). NFC with the allowance and the guard
   * band under the limit makes it very probable that WSC + starch is under; it never clears.
   */
  private static String nfc(AccountedAnalysis analysis, Limit limit, JudgementSettings settings) {
    Optional<Measured> nfc = analysis.analysis().find(AnalyteCode.NFC).map(limit.unit()::of);
    if (nfc.isEmpty() || analysis.analysis().find(AnalyteCode.WSC).isPresent()) {
      return "";
    }
    Measured v = nfc.get();
    double end = v.upper() + settings.nfcAllowance() + limit.guardFactor() * v.u();
    return "; NFC of "
        + Words.number(v.best())
        + " % "
        + (end <= limit.value()
            ? "makes it very probable that it is under, provisionally,"
            : "does not bound it")
        + " and never clears";
  }
}
