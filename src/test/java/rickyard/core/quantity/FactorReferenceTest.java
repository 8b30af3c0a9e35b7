package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Factors between printed units, and of the guard band, held against tables with their sources. */
class FactorReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/conversion-factors.csv", useHeadersInDisplayName = true)
  void theFactorIsTheOneByDefinition(
      String from, String to, double factor, double tolerance, String source) {
    Unit a = Unit.findByCode(from).orElseThrow();
    Unit b = Unit.findByCode(to).orElseThrow();

    assertEquals(factor, a.convert(1, b), tolerance, source);
    assertEquals(1, b.convert(a.convert(1, b), a), 1e-15, source);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/guard-factors.csv", useHeadersInDisplayName = true)
  void theGuardFactorIsTheOneSidedQuantile(double risk, double z, double tolerance, String source) {
    assertEquals(z, Normal.guardFactor(risk), tolerance, source);
    assertEquals(risk, Normal.cdf(-Normal.guardFactor(risk)), 1e-10, source);
  }
}
