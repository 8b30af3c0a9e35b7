package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;

/** Minerals against one another, and what is said of sodium, copper and vitamin E. */
class RatiosTest {
  private static final Settings SETTINGS = Foods.STANDARDS.settings();
  private static final Horse ADULT = Horses.adult(500).build();

  private static Amount grams(double best, double u, Origin origin) {
    return new Amount(best, best, best, u, best + 2 * u, origin, List.of());
  }

  private static NutrientLine ratio(Amount calcium, Amount phosphorus, Horse horse) {
    return CalciumRatio.line(calcium, phosphorus, horse, SETTINGS);
  }

  /** 20 ± 2 g to 10 ± 0.5 g: 2, with root(0.1² + 0.05²) = 11.2 % of it. */
  @Test
  void theErrorsOfBothMineralsAreInTheirRatio() {
    Amount reported =
        ratio(grams(20, 2, Origin.REPORTED), grams(10, 0.5, Origin.REPORTED), ADULT).supply();
    Amount assumed =
        ratio(grams(20, 2, Origin.ASSUMED), grams(10, 0.5, Origin.REPORTED), ADULT).supply();

    assertEquals(2, reported.best(), 1e-12);
    assertEquals(2 * Math.sqrt(0.0125), reported.u(), 1e-12);
    assertEquals(2 + 4 * Math.sqrt(0.0125), reported.ceiling(), 1e-12);
    assertEquals(2, assumed.ceiling(), 1e-12, "the spread of assumed values alarms nobody");
  }

  @Test
  void withoutCalciumTheRatioIsNothingAndWithoutPhosphorusThereIsNone() {
    Amount none = grams(0, 1, Origin.REPORTED);

    assertEquals(0, ratio(none, grams(10, 1, Origin.REPORTED), ADULT).supply().best());
    assertEquals(0, ratio(none, grams(10, 1, Origin.REPORTED), ADULT).supply().u());
    assertEquals(
        List.of("no phosphorus"),
        ratio(grams(10, 1, Origin.REPORTED), none, ADULT).supply().missing());
  }

  /** Adults tolerate 5:1, foals 3:1; not below 1.1:1. */
  @Test
  void theYoungTolerateLessCalciumToPhosphorus() {
    Horse foal =
        Horses.adult(230).mature(500).status(HorseStatus.GROWING, Level.NONE).aged(8).build();
    Amount four = grams(40, 0, Origin.REPORTED);
    Amount one = grams(10, 0, Origin.REPORTED);

    assertEquals(OptionalDouble.of(5), ratio(four, one, ADULT).maxTolerable());
    assertEquals(NutrientStatus.MEETS, ratio(four, one, ADULT).status());
    assertEquals(OptionalDouble.of(3), ratio(four, one, foal).maxTolerable());
    assertEquals(NutrientStatus.ABOVE_CEILING, ratio(four, one, foal).status());
    assertEquals(OptionalDouble.of(1.1), ratio(four, one, foal).requirement());
  }

  private static Foods hay() {
    return Foods.of("a", "grass-hay").dm(100).with(AnalyteCode.WSC, 9, 1);
  }

  private static Diet diet(Horse horse, Portion... portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(portions), needs, Foods.STANDARDS);
  }

  private static Diet ofHay(Foods hay) {
    return diet(ADULT, Portion.of(hay.lot(), 10, true));
  }

  private static String note(Diet diet, String code) {
    return diet.notes().stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("");
  }

  private static Diet calcium(double ca, double p) {
    return ofHay(hay().with(AnalyteCode.CA, ca, 0).with(AnalyteCode.P, p, 0));
  }

  @Test
  void asMuchCalciumAsPhosphorusIsNotInverted() {
    assertFalse(calcium(0.3, 0.3).hasNote("ca-p-inverted"));
    assertEquals(
        "there is less calcium than phosphorus", note(calcium(0.29, 0.3), "ca-p-inverted"));
  }

  @Test
  void zincToNoCopperIsNoRatio() {
    Diet diet = ofHay(hay().with(AnalyteCode.ZN, 40, 0).with(AnalyteCode.CU, 0, 0));

    assertFalse(diet.hasNote("zn-cu-unusual"));
    assertTrue(note(diet, "nutrients-below").contains("copper (0 % of the need)"));
  }

  /** 3 to 1 and 5 to 1 are usual; a billionth beyond them is no more than they. */
  @Test
  void zincToCopperAtAnEndOfWhatIsUsualIsUsual() {
    for (double zinc : new double[] {24, 23.999999976, 40, 40.00000004}) {
      Foods hay = hay().with(AnalyteCode.ZN, zinc, 0).with(AnalyteCode.CU, 8, 0);
      assertFalse(ofHay(hay).hasNote("zn-cu-unusual"), zinc + " to 8");
    }
  }

  /** Tolerated: 250 mg/kg; 5 mg/kg above it is said by name. */
  @Test
  void whatMayPassItsCeilingIsNamed() {
    assertEquals(
        "may pass what is tolerated: copper",
        note(ofHay(hay().with(AnalyteCode.CU, 255, 0)), "nutrients-above-ceiling"));
  }

  /** 500 kg need 10 g of sodium; 10 kg of hay. */
  @Test
  void saltIsOfferedWhereSodiumIsNotAssuredAndNoSaltIsFed() {
    Foods unsure = hay().with(AnalyteCode.NA, 0.11, 0.02);

    assertEquals(
        "hay holds little sodium and no salt is in the ration: offer plain salt, with water at"
            + " hand",
        note(ofHay(unsure), "salt"));
    assertFalse(withSalt(unsure, 0.001).hasNote("salt"), "some is fed");
    assertTrue(withSalt(unsure, 0).hasNote("salt"), "none is fed");
  }

  /** 10 kg of 0.03 % give 3 g, 5 g of salt 1.965 g; 5.035 g x 2.542 are 12.8 g. */
  @Test
  void saltThatDoesNotMakeUpForTheHayIsSaidSo() {
    assertEquals(
        "the salt fed does not make up for the little sodium of hay: about 13 g of plain salt a day"
            + " would meet the need; water at hand",
        note(withSalt(hay().with(AnalyteCode.NA, 0.03, 0), 0.005), "salt"));
  }

  private static Diet withSalt(Foods hay, double kg) {
    Foodstuff salt = Foods.of("s", "salt").dm(100).with(AnalyteCode.NA, 39.3, 0).feed();
    return diet(ADULT, Portion.of(hay.lot(), 10, true), Portion.of(salt, kg, false));
  }

  @Test
  void vitaminEIsSaidOfForageOnlyWithWhatTheGrassMayBring() {
    Portion hay = Portion.of(hay().lot(), 10, true);
    Horse grazing = Horses.adult(500).grazing(OptionalDouble.of(3)).build();
    Foodstuff oats = Foods.of("o", "concentrate").feed();

    String need = "is counted, against a need of 500 IU a day";
    assertTrue(note(diet(ADULT, hay), "vitamin-e").endsWith(need));
    assertTrue(
        note(diet(grazing, hay), "vitamin-e")
            .endsWith(need + "; what it grazes brings some, not counted"));
    assertFalse(diet(ADULT, Portion.of(oats, 3, false)).hasNote("vitamin-e"));
  }
}
