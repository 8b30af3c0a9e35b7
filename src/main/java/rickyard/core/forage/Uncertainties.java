package rickyard.core.forage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rickyard.core.quantity.Cites;

/**
 * How uncertain a laboratory's figure is: what the table of uncertainties says, row by row.
 *
 * <p>An unknown or calculated method counts as NIR, the less certain of the two.
 */
public final class Uncertainties {
  private final List<ErrorTerm> terms;

  /** Rows found already: a season asks for the same ones some million times. */
  private final Map<Asked, Optional<ErrorTerm>> found = new ConcurrentHashMap<>();

  private record Asked(String kind, AnalyteCode code, String method, MaterialClass material) {}

  public Uncertainties(List<ErrorTerm> terms) {
    this.terms = List.copyOf(terms);
  }

  /**
   * The laboratory's standard uncertainty (k = 1) of a figure.
   *
   * @param code the analyte
   * @param method how it was obtained
   * @param material what was analysed
   * @param figure the figure in its canonical unit, on dry matter where it scales
   * @return in the unit of {@code figure}; 0 where no row fits
   */
  @Cites(source = "memory", locator = "config/uncertainties.csv, row by row")
  public double lab(AnalyteCode code, Method method, MaterialClass material, double figure) {
    return best("lab", code, method == Method.WET ? "wet" : "nir", material)
        .map(t -> t.at(figure))
        .orElse(0.0);
  }

  /** What the laboratory's error rests on: the status of the row that was taken; empty if none. */
  public String labStatus(AnalyteCode code, Method method, MaterialClass material) {
    return best("lab", code, method == Method.WET ? "wet" : "nir", material)
        .map(ErrorTerm::status)
        .orElse("");
  }

  /** What the spread between cores rests on; empty if no row says anything. */
  public String coreStatus(AnalyteCode code, MaterialClass material) {
    return best("core", code, "any", material).map(ErrorTerm::status).orElse("");
  }

  /** Standard deviation between cores of one lot, in the unit of {@code figure}; 0 if unknown. */
  public double core(AnalyteCode code, MaterialClass material, double figure) {
    return best("core", code, "any", material).map(t -> t.at(figure)).orElse(0.0);
  }

  /** The number of cores to assume where nobody gives one; at least 1. */
  public int assumedCores() {
    return best("cores", AnalyteCode.DM, "any", MaterialClass.GRASS)
        .map(t -> (int) Math.max(1, Math.round(t.value())))
        .orElse(1);
  }

  /** The correlation r between the errors of soluble carbohydrate and starch, in [-1, 1]. */
  public double sumCorrelation() {
    return best("sum-correlation", AnalyteCode.DM, "any", MaterialClass.GRASS)
        .map(ErrorTerm::value)
        .orElse(0.0);
  }

  private Optional<ErrorTerm> best(
      String kind, AnalyteCode code, String method, MaterialClass material) {
    return found.computeIfAbsent(new Asked(kind, code, method, material), this::looked);
  }

  private Optional<ErrorTerm> looked(Asked asked) {
    ErrorTerm best = null;
    int fit = -1;
    for (ErrorTerm term : terms) {
      int now = term.fit(asked.kind(), asked.code(), asked.method(), asked.material());
      if (now > fit) {
        fit = now;
        best = term;
      }
    }
    return Optional.ofNullable(best);
  }
}
