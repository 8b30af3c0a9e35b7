package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the normal distribution against values computed with 60 digits; the rows say how. */
class NormalReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/normal-tail.csv", useHeadersInDisplayName = true)
  void givesTheTailOnBothSides(
      double z, double tail, double relativeTolerance, String source, String locator) {
    assertEquals(tail, Normal.cdf(-z), tail * relativeTolerance, () -> source + ", " + locator);
    assertEquals(1 - tail, Normal.cdf(z), 1e-14, () -> source + ", " + locator);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/normal-tail.csv", useHeadersInDisplayName = true)
  void theGuardFactorIsTheDistanceThatLeavesTheTail(double z, double tail) {
    assertEquals(z, Normal.guardFactor(tail), 1e-9 * z);
  }

  @Test
  void halfOfAllLiesBelowTheMiddle() {
    assertEquals(0.5, Normal.cdf(0));
    assertEquals(0, Normal.guardFactor(0.5));
  }

  @Test
  void nothingLiesBeyondInfinity() {
    assertEquals(0, Normal.cdf(Double.NEGATIVE_INFINITY));
    assertEquals(1, Normal.cdf(Double.POSITIVE_INFINITY));
    assertEquals(0, Normal.cdf(-1e9));
    assertEquals(1, Normal.cdf(1e9));
  }

  @Test
  void noNumberHasNoTail() {
    assertThrows(IllegalArgumentException.class, () -> Normal.cdf(Double.NaN));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.05, 0.5000001, 1, Double.NaN})
  void aRiskIsAboveNoneAndAtMostEven(double risk) {
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> Normal.guardFactor(risk));

    assertTrue(thrown.getMessage().endsWith("was " + risk), thrown.getMessage());
  }

  @Test
  void aRiskTooSmallForAnyPracticeStillEnds() {
    assertEquals(37.5, Normal.guardFactor(Double.MIN_VALUE), 1.5);
  }
}
