package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Checks {@link Identities} against published figures. Values are the sources', never ours. */
class IdentitiesReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/relative-feed-value.csv", useHeadersInDisplayName = true)
  void relativeFeedValueAgrees(
      double adf, double ndf, double expected, double tolerance, String source, String locator) {
    Span actual = Identities.relativeFeedValue(Span.exactly(adf), Span.exactly(ndf));

    assertEquals(expected, actual.middle(), tolerance, () -> source + ", " + locator);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(
      resources = "/reference/non-fibre-carbohydrate.csv",
      useHeadersInDisplayName = true)
  void nonFibreCarbohydrateAgrees(
      double cp, double ndf, double ee, double ash, double expected, double tolerance) {
    Span actual =
        Identities.nonFibre(
            Span.exactly(100),
            Span.exactly(cp),
            Span.exactly(ndf),
            Span.exactly(ee),
            Span.exactly(ash));

    assertEquals(expected, actual.middle(), tolerance);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/roughages-as-fed.csv", useHeadersInDisplayName = true)
  void asFedToDryMatterAgrees(
      double dm, double asFed, double expected, double tolerance, String source, String locator) {
    Measured dryMatter = measured(dm, Basis.AS_FED);

    Measured actual = measured(asFed, Basis.AS_FED).toDryMatter(dryMatter);

    assertEquals(expected, actual.best(), tolerance, () -> source + ", " + locator);
    assertTrue(
        Identities.ratio(Span.exactly(asFed), Span.of(actual)).meets(Span.exactly(dm / 100)));
  }

  /** Source: exact factor 62.0049 / 14.0067, and edges of circulating nitrate tables with 4.4. */
  @Test
  void nitrateAllowsBothFactorsInUse() {
    Span expected = Identities.nitrate(Span.exactly(1000));

    assertEquals(4426.8, expected.middle(), 0.1);
    assertTrue(expected.meets(Span.exactly(4400)));
    assertTrue(expected.meets(Span.exactly(4430)));
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/nitrate.csv", useHeadersInDisplayName = true)
  void nitrateIsTheStatedMultipleOfItsNitrogen(
      double nitrogen, double nitratePercent, double tolerance, String source, String locator) {
    Span ppm = Identities.nitrate(Span.exactly(nitrogen));
    var made = Samples.analysis(Samples.of("N2", Samples.dm("NO3", nitratePercent)));
    double back = made.analysis().find(AnalyteCode.NO3_N).orElseThrow().best();

    assertEquals(nitratePercent, ppm.middle() / 10_000, tolerance, () -> source + ", " + locator);
    assertEquals(nitrogen, back, tolerance * 10_000 / 4.4268, () -> source + ", " + locator);
  }

  private static Measured measured(double value, Basis basis) {
    return Measured.of(
        Unit.PERCENT, basis, value, 0, 0, new Evidence.Derived("printed", List.of()));
  }
}
