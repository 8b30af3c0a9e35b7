package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
