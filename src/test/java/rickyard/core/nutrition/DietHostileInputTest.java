package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

class DietHostileInputTest {
  private static Diet diet(Horse horse, Portion... portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(portions), needs, Foods.STANDARDS);
  }

  @Test
  void nothingToEatIsRefusedAndLacksEverything() {
    Diet diet = diet(Horses.adult(500).build());
    assertEquals(Floor.REFUSE, diet.intake().floor());
    assertEquals(NutrientStatus.BELOW, diet.line(Nutrient.CP).status());
    assertEquals(NutrientStatus.UNKNOWN, diet.line(Nutrient.CA_P).status());
    assertTrue(diet.content(AnalyteCode.NSC_WSC).isEmpty());
    assertTrue(diet.bucketMeal().isEmpty());
  }

  @Test
  void zeroKilogramsOfAnUnknownItemChangeNothing() {
    Foodstuff lot =
        Foods.of("a", "grass-hay").with(AnalyteCode.WSC, 9, 1).with(AnalyteCode.STARCH, 1, 1).lot();
    Foodstuff unknown = Foods.of("u", "concentrate").feed();
    Diet diet =
        diet(Horses.adult(500).build(), Portion.of(lot, 10, true), Portion.of(unknown, 0, false));
    assertEquals(10, diet.content(AnalyteCode.NSC_WSC).orElseThrow().upper());
    assertTrue(diet.line(Nutrient.CU).supply().isComplete());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void anAmountThatIsNoneIsRefused(double kg) {
    Foodstuff lot = Foods.of("a", "grass-hay").lot();
    assertThrows(IllegalArgumentException.class, () -> Portion.of(lot, kg, true));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1e-300, 1e-9, 1e6, 1e12})
  void anAmountBeyondAllSenseGivesFiniteFiguresAndNoCrash(double kg) {
    Foodstuff lot =
        Foods.of("a", "grass-hay").with(AnalyteCode.WSC, 9, 1).with(AnalyteCode.STARCH, 1, 1).lot();
    Foodstuff oats = Foods.of("o", "concentrate").with(AnalyteCode.STARCH, 50, 1).feed();
    Diet diet =
        diet(
            Horses.adult(500).build(),
            new Portion(lot, kg, kg, true, OptionalInt.empty()),
            Portion.of(oats, kg, false));
    for (Nutrient nutrient : Nutrient.values()) {
      Amount supply = diet.line(nutrient).supply();
      assertTrue(Double.isFinite(supply.best()) && Double.isFinite(supply.u()), nutrient::code);
    }
    assertTrue(diet.notes().stream().noneMatch(n -> n.words().contains("NaN")));
  }

  @Test
  void aThousandItemsAreSummedOnceEach() {
    Portion[] portions = new Portion[1000];
    for (int i = 0; i < portions.length; i++) {
      portions[i] =
          Portion.of(
              Foods.of("i" + i, "grass-hay").dm(100).with(AnalyteCode.CU, 10, 1).lot(), 0.01, true);
    }
    NutrientLine copper = diet(Horses.adult(500).build(), portions).line(Nutrient.CU);
    assertEquals(100, copper.supply().best(), 1e-9);
    assertEquals(0.01 * Math.sqrt(1000), copper.supply().u(), 1e-12);
  }

  @Test
  void noMealsAreRefused() {
    Foodstuff lot = Foods.of("a", "grass-hay").lot();
    assertThrows(
        IllegalArgumentException.class, () -> new Portion(lot, 1, 0, false, OptionalInt.of(0)));
  }

  @Test
  void anUnknownMaterialWithoutDryMatterMakesNoFoodstuff() {
    assertTrue(Foods.MAKER.ofUnanalysedLot(Foods.lot("x", "seaweed")).isEmpty());
  }

  @Test
  void anUnknownMaterialWithDryMatterHasNoTypicalValues() {
    Foodstuff food = Foods.of("x", "seaweed").dm(85).lot();
    assertTrue(food.contents().isEmpty());
    assertTrue(food.isForage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 101})
  void aDryMatterThatCannotBeIsRefused(double dm) {
    assertThrows(IllegalArgumentException.class, () -> Foods.of("a", "grass-hay").dm(dm).lot());
  }

  @Test
  void anAsFedContentIsRefused() {
    Measured asFed = Measured.of(Unit.PERCENT, Basis.AS_FED, 9, 0.05, 0, Foods.reported("9"));
    assertThrows(
        IllegalArgumentException.class,
        () -> Foods.of("a", "concentrate").with(AnalyteCode.CP, asFed).feed());
  }

  @Test
  void twoDifferentFoodstuffsOfOneNameAreABug() {
    Portion one = Portion.of(Foods.of("a", "grass-hay").dm(90).lot(), 1, true);
    Portion two = Portion.of(Foods.of("a", "grass-hay").dm(50).lot(), 1, true);
    assertThrows(IllegalArgumentException.class, () -> diet(Horses.adult(500).build(), one, two));
  }

  @Test
  void anAnalysisThatMakesMoreThanAHundredPercentGivesNoEnergy() {
    Foodstuff food =
        Foods.of("a", "grass-hay")
            .with(AnalyteCode.CP, 30, 0)
            .with(AnalyteCode.ADF, 50, 0)
            .with(AnalyteCode.NDF, 80, 0)
            .with(AnalyteCode.EE, 2, 0)
            .with(AnalyteCode.ASH, 9, 0)
            .lot();
    assertEquals(Origin.ASSUMED, Origin.of(food.find(AnalyteCode.DE).orElseThrow().evidence()));
  }

  @Test
  void aContentInAnotherUnitIsConverted() {
    Measured grams = Measured.of(Unit.G_PER_KG, Basis.DRY_MATTER, 100, 0, 0, Foods.reported("100"));
    Foodstuff food = Foods.of("a", "concentrate").dm(100).with(AnalyteCode.CP, grams).feed();
    Diet diet = diet(Horses.adult(500).build(), Portion.of(food, 2, false));
    assertEquals(200, diet.line(Nutrient.CP).supply().best(), 1e-9);
  }

  @Test
  void aGuaranteedMinimumAlarmsNobodyAboutACeiling() {
    Measured least =
        Measured.atLeast(Unit.MG_PER_KG, Basis.DRY_MATTER, 20, 0, Foods.reported("20"));
    Foodstuff food = Foods.of("a", "concentrate").dm(100).with(AnalyteCode.CU, least).feed();
    Diet diet = diet(Horses.adult(500).build(), Portion.of(food, 10, false));
    assertEquals(NutrientStatus.MEETS, diet.line(Nutrient.CU).status());
  }
}
