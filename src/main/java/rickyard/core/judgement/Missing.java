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

  static String words(AccountedAnalysis analysis, Limit limit) {
    AnalyteCode code = limit.analyte();
    if (code.equals(AnalyteCode.NSC_WSC)) {
      return sum(analysis, limit, AnalyteCode.WSC);
    }
    if (code.equals(AnalyteCode.NSC_ESC)) {
      return sum(analysis, limit, AnalyteCode.ESC);
    }
    return part(analysis, code, limit.words())
        .orElse(limit.words() + " is not bounded by the report");
  }

  private static String sum(AccountedAnalysis analysis, Limit limit, AnalyteCode soluble) {
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
        + nfc(analysis, limit)
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

  /** NFC holds NSC and more, with the error of four analyses: a hint, never a verdict. */
  private static String nfc(AccountedAnalysis analysis, Limit limit) {
    Optional<Measured> nfc = analysis.analysis().find(AnalyteCode.NFC);
    if (nfc.isEmpty() || analysis.analysis().find(AnalyteCode.WSC).isPresent()) {
      return "";
    }
    Measured v = nfc.get();
    boolean under = v.upper() + 2 * v.u() < limit.value();
    return "; NFC of "
        + Words.number(v.best())
        + " % "
        + (under ? "suggests that it is under, provisionally" : "does not bound it")
        + " and never clears";
  }
}
