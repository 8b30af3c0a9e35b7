package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Digestible energy by the equation: its uncertainty, its limits, and what it takes its place of.
 */
class EnergyEquationTest {
  private static final EnergyEquation EQUATION = Foods.STANDARDS.energy();

  private static Measured percent(double value, double u) {
    return Measured.of(Unit.PERCENT, Basis.DRY_MATTER, value, 0, u, Foods.reported("" + value));
  }

  private static Optional<Measured> of(double cp, double adf, double ndf, double ee, double ash) {
    return EQUATION.of(
        percent(cp, 0), percent(adf, 0), percent(ndf, 0), percent(ee, 0), percent(ash, 0), 0.18);
  }

  /**
   * One point of error in one content, NFC by difference moving against it. CP .01218 - .02035; ADF
   * -.00937 + .00383; NDF -.00383 - .02035; fat .04718 - .02035, above 5 % .02 Mcal/lb more; ash
   * -.0263 - .02035.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0, 0, 0, 0, 2.5, 0.00817",
    "0, 1, 0, 0, 0, 2.5, 0.00554",
    "0, 0, 1, 0, 0, 2.5, 0.02418",
    "0, 0, 0, 1, 0, 2.5, 0.02683",
    "0, 0, 0, 1, 0, 5, 0.02683",
    "0, 0, 0, 1, 0, 5.1, 0.07092",
    "0, 0, 0, 0, 1, 2.5, 0.04665",
    "0, 0, 0, 0, 0, 2.5, 0",
    "1, 1, 1, 1, 1, 2.5, 0.05981"
  })
  void theErrorOfEachContentGoesThroughItsCoefficientAndThatOfNfc(
      double cp, double adf, double ndf, double ee, double ash, double fat, double u) {
    Measured found =
        EQUATION
            .of(
                percent(10, cp),
                percent(38, adf),
                percent(62, ndf),
                percent(fat, ee),
                percent(8, ash),
                0)
            .orElseThrow();

    assertEquals(u, found.u(), 0.00001);
  }

  @Test
  void theEquationsOwnErrorIsAdded() {
    assertEquals(0.18, of(10, 38, 62, 2.5, 8).orElseThrow().u(), 1e-12);
  }

  /** 2.0555: the arithmetic pin of the reference. */
  @Test
  void anAnalysisThatAddsUpGivesAValueAndOneThatDoesNotGivesNone() {
    assertEquals(2.0555, of(10, 38, 62, 2.5, 8).orElseThrow().best(), 0.00005);
    assertTrue(of(20, 38, 62, 8, 10).isPresent(), "all of it is accounted for: 100 %");
    assertTrue(of(20.5, 38, 62, 8, 10).isEmpty(), "100.5 %");
    assertTrue(of(10, 62, 62, 2.5, 8).isPresent(), "no hemicellulose");
    assertTrue(of(10, 62.5, 62, 2.5, 8).isEmpty(), "ADF is a part of NDF");
  }

  @Test
  void anEnergyThatIsNotPositiveIsNone() {
    Source source = new Source("de.csv", 1, "assumed", "", Standing.ASSUMED);
    Measured any = percent(10, 0);

    assertTrue(
        new EnergyEquation(0, 0, 0, 0, 0, 0, 0, 0, source)
            .of(any, any, any, any, any, 0)
            .isEmpty());
    assertFalse(
        new EnergyEquation(0.1, 0, 0, 0, 0, 0, 0, 0, source)
            .of(any, any, any, any, any, 0)
            .isEmpty());
  }

  private static Foods fibres() {
    return Foods.of("lot-7", "grass-hay")
        .with(AnalyteCode.CP, 10, 0.5)
        .with(AnalyteCode.ADF, 38, 0.9)
        .with(AnalyteCode.NDF, 62, 1.2);
  }

  /** Fat 2.5 and ash 7.5 % are typical of grass hay: 2.0555 + 0.5 (.0263 + .02035) = 2.0788. */
  @Test
  void onlyFatAndAshMayBeTypicalOfTheMaterial() {
    Measured energy = fibres().lot().find(AnalyteCode.DE).orElseThrow();

    assertEquals(2.0788, energy.best(), 0.0001);
    assertEquals(Origin.PART_ASSUMED, Origin.of(energy.evidence()));
    Measured typical =
        Foods.of("x", "grass-hay").with(AnalyteCode.CP, 10, 0).lot().find(AnalyteCode.DE).get();
    assertEquals(2.0, typical.best());
    assertEquals(Origin.ASSUMED, Origin.of(typical.evidence()));
  }

  /** A value printed as fed and carried to dry matter is the report's all the same. */
  @Test
  void aValuePrintedAsFedIsComparedToo() {
    Measured asFed =
        Measured.of(Unit.MCAL_PER_KG, Basis.AS_FED, 2.16, 0, 0.1, Foods.reported("2.16"));
    Measured dm = Measured.of(Unit.PERCENT, Basis.AS_FED, 90, 0, 0, Foods.reported("90"));
    Foodstuff hay = fibres().with(AnalyteCode.DE, asFed.toDryMatter(dm)).lot();

    EnergyComparison found = EnergyComparison.of(hay, Foods.STANDARDS).orElseThrow();

    assertEquals(2.4, found.printed(), 1e-12);
    assertTrue(found.isPrintedInForce());
    assertEquals(
        "energy-differs",
        EnergyComparison.notes(
                List.of(new DietItem(Portion.of(hay, 10, true), 9, 1)), Foods.STANDARDS)
            .get(0)
            .code());
  }

  /** Grass hay: lysine 3.5 ± 0.7 % of 10 ± 0.5 % protein is 0.35 ± root(0.0175² + 0.07²) %. */
  @Test
  void lysineThatNobodyReportedIsAShareOfTheItemsOwnProtein() {
    Measured lysine =
        Foods.of("a", "grass-hay")
            .with(AnalyteCode.CP, 10, 0.5)
            .lot()
            .find(AnalyteCode.LYS)
            .orElseThrow();

    assertEquals(0.35, lysine.best(), 1e-12);
    assertEquals(Math.hypot(0.0175, 0.07), lysine.u(), 1e-12);
    assertTrue(lysine.evidence() instanceof Evidence.Assumed);
  }

  @Test
  void lysineThatWasReportedStandsAndWithoutProteinThereIsNone() {
    Foods hay =
        Foods.of("a", "grass-hay").with(AnalyteCode.CP, 10, 0.5).with(AnalyteCode.LYS, 0.5, 0);

    assertEquals(0.5, hay.lot().find(AnalyteCode.LYS).orElseThrow().best());
    assertTrue(Foods.of("f", "concentrate").feed().find(AnalyteCode.LYS).isEmpty());
  }
}
