package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.forage.Method;
import rickyard.core.forage.Uncertainties;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;

/** Says what the uncertainty of a judged value is made of, and what each part rests on. */
public final class ErrorAccount {
  private final AccountedAnalysis analysis;
  private final Uncertainties uncertainties;
  private final JudgementSettings settings;

  private ErrorAccount(
      AccountedAnalysis analysis, Uncertainties uncertainties, JudgementSettings settings) {
    this.analysis = analysis;
    this.uncertainties = uncertainties;
    this.settings = settings;
  }

  /**
   * One sentence for each quantity that was judged, sorted.
   *
   * @param verdicts of the lot
   * @param analysis of the lot
   * @param uncertainties the table that its errors were taken from
   */
  public static List<String> of(
      List<Verdict> verdicts,
      AccountedAnalysis analysis,
      Uncertainties uncertainties,
      JudgementSettings settings) {
    ErrorAccount account = new ErrorAccount(analysis, uncertainties, settings);
    List<String> lines = new ArrayList<>();
    TreeSet<String> seen = new TreeSet<>();
    for (Verdict verdict : verdicts) {
      Limit limit = verdict.limit();
      if (!verdict.isSilent() && verdict.value().isPresent() && seen.add(limit.quantity())) {
        account.line(verdict, verdicts).ifPresent(lines::add);
      }
    }
    lines.sort(null);
    return List.copyOf(lines);
  }

  private Optional<String> line(Verdict verdict, List<Verdict> all) {
    AnalyteCode code = budgeted(verdict.limit().analyte());
    return analysis
        .findBudget(code)
        .map(
            b ->
                verdict.limit().words()
                    + ": ± "
                    + Words.uncertainty(b.u())
                    + " (k = 1) from "
                    + (b.isOfSeveral() ? "several tests weighted by 1/u²; the most certain: " : "")
                    + parts(code, b)
                    + sensitivity(verdict.limit().analyte(), all));
  }

  /** Dry matter has one uncertainty, whatever method a report names for it. */
  private static final String OF_WATER = "dry matter: as of NIR, whatever the method";

  private static AnalyteCode budgeted(AnalyteCode code) {
    return code.equals(AnalyteCode.MOISTURE) ? AnalyteCode.DM : code;
  }

  private String parts(AnalyteCode code, ErrorBudget budget) {
    AnalyteCode carrier = carrier(code);
    Method method = analysis.methods().getOrDefault(carrier, Method.UNKNOWN);
    String lab = status(uncertainties.labStatus(carrier, method, analysis.material()));
    String core = status(uncertainties.coreStatus(carrier, analysis.material()));
    return "laboratory "
        + Words.uncertainty(budget.lab())
        + " ("
        + (carrier.equals(AnalyteCode.DM) ? OF_WATER : method(method))
        + ", "
        + analysis.material().code()
        + lab
        + "), "
        + (budget.core() > 0
            ? "sampling "
                + Words.uncertainty(budget.sampling())
                + " ("
                + Words.uncertainty(budget.core())
                + " between cores"
                + core
                + ", "
                + budget.cores()
                + (budget.cores() == 1 ? " core " : " cores ")
                + from()
                + ")"
            : "no sampling part known")
        + ", rounding and conversion "
        + Words.uncertainty(budget.rest());
  }

  /** The reported value whose method stands for a derived one. */
  private AnalyteCode carrier(AnalyteCode code) {
    if (analysis.methods().containsKey(code)) {
      return code;
    }
    if (code.equals(AnalyteCode.NSC_WSC)) {
      return AnalyteCode.WSC;
    }
    return code.equals(AnalyteCode.NSC_ESC) ? AnalyteCode.ESC : code;
  }

  private static String method(Method method) {
    return switch (method) {
      case WET -> "wet chemistry";
      case NIR -> "NIR";
      case CALCULATED -> "calculated: counts as NIR";
      case UNKNOWN -> "method not said: counts as NIR";
    };
  }

  private String from() {
    return switch (analysis.coresFrom()) {
      case "assumed" -> "assumed";
      case "report" -> "by the report";
      default -> "by " + analysis.coresFrom();
    };
  }

  private static String status(String status) {
    return status.isEmpty() ? "" : ", " + status.replace("memory", "from memory");
  }

  /** What another correlation between the errors of the two parts of a sum would do. */
  private String sensitivity(AnalyteCode sum, List<Verdict> all) {
    Optional<Measured> value = analysis.analysis().find(sum);
    Optional<Measured> starch = analysis.analysis().find(AnalyteCode.STARCH);
    Optional<Measured> soluble =
        sum.equals(AnalyteCode.NSC_WSC)
            ? analysis.analysis().find(AnalyteCode.WSC)
            : sum.equals(AnalyteCode.NSC_ESC)
                ? analysis.analysis().find(AnalyteCode.ESC)
                : Optional.empty();
    boolean isSum =
        value
            .map(v -> v.isBoundedAbove() && v.evidence() instanceof Evidence.Derived)
            .orElse(false);
    if (!isSum || starch.isEmpty() || soluble.isEmpty()) {
      return "";
    }
    Measured v = value.get();
    Measured other =
        v.withU(soluble.get().plus(starch.get(), settings.sensitivity(), v.evidence()).u());
    List<String> turned = new ArrayList<>();
    for (Verdict verdict : all) {
      if (verdict.limit().analyte().equals(sum)) {
        Word word = DecisionRule.find(other, verdict.limit()).word();
        if (word != verdict.word()) {
          turned.add(verdict.limit().id() + " would be " + word.code());
        }
      }
    }
    return "; if the errors of its parts went together by r = "
        + Words.number(settings.sensitivity())
        + ", ± "
        + Words.uncertainty(other.u())
        + (turned.isEmpty() ? " and no verdict changes" : ": " + String.join(", ", turned));
  }
}
