package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rickyard.core.quantity.Unit;

/** Digestible energy of forage from its analysis, and blends by weight, against worked examples. */
class EnergyUnitsReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/de-equation.csv", useHeadersInDisplayName = true)
  void theEquationGivesTheWorkedExample(
      double cp,
      double adf,
      double ndf,
      double ee,
      double ash,
      double kcalPerKg,
      double mjPerKg,
      Double mcalPerLb,
      String source) {
    double found = Foods.STANDARDS.energy().mcalPerKg(cp, adf, ndf, ee, ash);

    assertEquals(kcalPerKg, Unit.MCAL_PER_KG.convert(found, Unit.KCAL_PER_KG), 0.05, source);
    assertEquals(mjPerKg, Unit.MCAL_PER_KG.convert(found, Unit.MJ_PER_KG), 0.0005, source);
    if (mcalPerLb != null) {
      assertEquals(mcalPerLb, Unit.MCAL_PER_KG.convert(found, Unit.MCAL_PER_LB), 5e-5, source);
    }
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/blend-as-fed.csv", useHeadersInDisplayName = true)
  void aBlendWeighedAsFedHoldsTheMeanByDryMatter(
      double a, double dmA, double b, double dmB, double share, double ratio, double content) {
    assertEquals(ratio, (share / dmB) / ((1 - share) / dmA), 1e-6);

    Horse horse = Horses.adult(500).build();
    Foodstuff high = Foods.of("a", "grass-hay").dm(dmA).with(SUM, a, 0).lot();
    Foodstuff low = Foods.of("b", "haylage").dm(dmB).with(SUM, b, 0).lot();
    Diet diet =
        Diet.evaluate(
            horse,
            java.util.List.of(Portion.of(high, 3, true), Portion.of(low, 3 * ratio, true)),
            Requirements.of(horse, Horses.DAY, Foods.STANDARDS),
            Foods.STANDARDS);

    assertEquals(content, diet.content(SUM).orElseThrow().best(), 1e-6);
  }

  private static final rickyard.core.forage.AnalyteCode SUM =
      rickyard.core.forage.AnalyteCode.NSC_WSC;
}
