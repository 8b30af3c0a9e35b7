package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * Makes the analysis of a sample: its settled figures on dry matter with laboratory, sampling and
 * rounding errors, and what follows from them.
 *
 * <p>Figures in doubt are left out together with what hangs on them. An as-fed sugar or nitrate
 * without a dry matter is kept as a lower bound, since its dry-matter value can only be higher. NSC
 * is WSC + starch (or ESC + starch) where both are there, else a printed NSC whose definition is
 * settled, else the best lower bound that the parts allow, open above.
 */
public final class AnalysisMaker {
  private final Uncertainties uncertainties;

  public AnalysisMaker(Uncertainties uncertainties) {
    this.uncertainties = requireNonNull(uncertainties, "uncertainties");
  }

  /**
   * The analysis of one sample.
   *
   * @param sample as read; figures without a value or with an open doubt stay out
   * @param subject what the sample stands for
   */
  public AccountedAnalysis make(Sample sample, Subject subject) {
    return new SampleReduction(sample, subject, uncertainties).reduce();
  }

  /** The correlation between soluble carbohydrate and starch that its sums were made with. */
  double sumCorrelation() {
    return uncertainties.sumCorrelation();
  }
}
