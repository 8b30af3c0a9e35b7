package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Holds the sums of errors against calculated oracles; the rows name their sources. */
class ErrorPropagationReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/sampling-error.csv", useHeadersInDisplayName = true)
  void moreCoresShrinkTheSamplingError(
      double lab, double core, int cores, double u, double tolerance, String source) {
    assertEquals(u, new ErrorBudget(lab, lab, core, cores, 0).u(), tolerance, source);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/sum-of-contents.csv", useHeadersInDisplayName = true)
  void errorsOfASumAddWithTheirCorrelation(
      double u1, double u2, double r, double u, double tolerance, String source) {
    Evidence said = new Evidence.Assumed("test", "row");
    Measured a = Measured.of(Unit.PERCENT, Basis.DRY_MATTER, 9, 0, u1, said);
    Measured b = Measured.of(Unit.PERCENT, Basis.DRY_MATTER, 1, 0, u2, said);

    assertEquals(u, a.plus(b, r, said).u(), tolerance, source);
    assertEquals(
        u,
        new ErrorBudget(u1, u1, 0, 1, 0).plus(new ErrorBudget(u2, u2, 0, 1, 0), r).u(),
        tolerance,
        source);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/weighted-mean.csv", useHeadersInDisplayName = true)
  void testsOfOneLotAreWeightedByTheirCertainty(
      double y1,
      double u1,
      double y2,
      double u2,
      double mean,
      double u,
      boolean agree,
      double tolerance,
      String source) {
    Evidence said = new Evidence.Assumed("test", "row");
    Measured a = Measured.of(Unit.PERCENT, Basis.DRY_MATTER, y1, 0, u1, said);
    Measured b = Measured.of(Unit.PERCENT, Basis.DRY_MATTER, y2, 0, u2, said);

    Measured both = Combining.mean(List.of(a, b), List.of(0.0, 0.0));

    assertEquals(mean, both.best(), tolerance, source);
    assertEquals(u, both.u(), tolerance, source);
    assertEquals(agree, Combining.disagreement(test(a), test(b), false).isEmpty(), source);
  }

  private static AccountedAnalysis test(Measured wsc) {
    return new AccountedAnalysis(
        new Analysis("N2", "", Optional.empty(), new TreeMap<>(Map.of(AnalyteCode.WSC, wsc))),
        MaterialClass.GRASS,
        1,
        "report",
        new TreeMap<>(),
        new TreeMap<>(),
        List.of());
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/as-fed-to-dry-matter.csv", useHeadersInDisplayName = true)
  void theDryMatterCarriesItsOwnError(
      double asFed, double uAsFed, double dm, double uDm, double dry, double u, double tolerance) {
    Evidence said = new Evidence.Assumed("test", "row");
    Measured content = Measured.of(Unit.PERCENT, Basis.AS_FED, asFed, 0, uAsFed, said);

    Measured found = content.toDryMatter(Measured.of(Unit.PERCENT, Basis.AS_FED, dm, 0, uDm, said));

    assertEquals(dry, found.best(), tolerance);
    assertEquals(u, found.u(), tolerance);
  }
}
