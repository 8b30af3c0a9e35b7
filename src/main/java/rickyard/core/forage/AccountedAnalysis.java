package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * An analysis with the account of how it was made: cores, methods, what was left out and why.
 *
 * @param analysis the values
 * @param material the class of material that the uncertainties were taken for
 * @param cores cores that stand behind it, at least 1
 * @param coresFrom {@code report}, {@code lots.csv} or {@code assumed}
 * @param methods method of each reported value that is in the analysis
 * @param budgets what each value's uncertainty is made of
 * @param leftOut what the sample gave and the analysis does not hold, with the reason
 */
public record AccountedAnalysis(
    Analysis analysis,
    MaterialClass material,
    int cores,
    String coresFrom,
    SortedMap<AnalyteCode, Method> methods,
    SortedMap<AnalyteCode, ErrorBudget> budgets,
    List<LeftOut> leftOut)
    implements Serializable {

  /** A value that the analysis does not hold though the sample gave something. */
  public record LeftOut(AnalyteCode analyte, String reason) implements Serializable {
    public LeftOut {
      requireNonNull(analyte, "analyte");
      requireNonNull(reason, "reason");
    }
  }

  public AccountedAnalysis {
    requireNonNull(analysis, "analysis");
    requireNonNull(material, "material");
    requireNonNull(coresFrom, "coresFrom");
    if (cores < 1) {
      throw new IllegalArgumentException("cores must be >= 1, were " + cores);
    }
    methods = Collections.unmodifiableSortedMap(new TreeMap<>(methods));
    budgets = Collections.unmodifiableSortedMap(new TreeMap<>(budgets));
    leftOut = List.copyOf(leftOut);
  }

  public Optional<ErrorBudget> findBudget(AnalyteCode code) {
    return Optional.ofNullable(budgets.get(code));
  }

  /** Why a value is missing although the sample gave something; empty if it gave nothing. */
  public String whyLeftOut(AnalyteCode code) {
    return leftOut.stream()
        .filter(l -> l.analyte().equals(code))
        .map(LeftOut::reason)
        .findFirst()
        .orElse("");
  }

  /** What was assumed, in a sentence for the page; empty if nothing was. */
  public String assumption() {
    return coresFrom.equals("assumed") ? "number of cores unknown, " + cores + " assumed" : "";
  }
}
