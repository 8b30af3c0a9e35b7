package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The forage equation against arithmetic pins; its coefficients were found in no source. */
class EnergyEquationReferenceTest {
  private static final EnergyEquation EQUATION = Foods.STANDARDS.energy();

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/energy-equation.csv", useHeadersInDisplayName = true)
  void agreesWithThePin(
      double cp, double adf, double ndf, double ee, double ash, double mcal, double tolerance) {
    assertEquals(mcal, EQUATION.mcalPerKg(cp, adf, ndf, ee, ash), tolerance);
  }

  /** The same pins in other units: 8.795 MJ/kg and 0.9535 Mcal/lb; 10.125 and 1.0976. */
  @Test
  void agreesWithThePinsInOtherUnits() {
    double grass = EQUATION.mcalPerKg(10, 38, 62, 2.5, 7);
    double legume = EQUATION.mcalPerKg(20, 31, 40, 2.2, 10.5);
    assertEquals(8.795, grass * 4.184, 0.0005);
    assertEquals(0.9535, grass * 0.45359237, 0.00005);
    assertEquals(10.125, legume * 4.184, 0.0005);
    assertEquals(1.0976, legume * 0.45359237, 0.00005);
  }

  /** NFC stands in it, not WSC + starch: a point of NFC less, all else equal, is 20.35 kcal. */
  @Test
  void aPointOfNonFibreCarbohydrateIsTwentyKilocalories() {
    double nfc = EQUATION.mcalPerKg(10, 0, 60, 2, 8);
    double pointToHemicellulose = EQUATION.mcalPerKg(10, 0, 61, 2, 8);
    assertEquals(0.02035 + 0.00383, nfc - pointToHemicellulose, 1e-9);
  }

  /** Conclusions of a proceedings paper: 0.02 Mcal/lb more for each per cent of fat above 5. */
  @Test
  void fatAboveFivePercentAddsItsFurtherTerm() {
    double slope = EQUATION.mcalPerKg(10, 30, 50, 5, 8) - EQUATION.mcalPerKg(10, 30, 50, 4, 8);
    double rich = EQUATION.mcalPerKg(10, 30, 50, 6, 8) - EQUATION.mcalPerKg(10, 30, 50, 5, 8);
    assertEquals(0.02, (rich - slope) * 0.45359237, 1e-9);
  }
}
