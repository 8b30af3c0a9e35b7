package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/** What is said beside a diet; each sentence on both sides of the line that brings it. */
class DietNotesTest {
  private static Diet diet(Horse horse, Portion... portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(portions), needs, Foods.STANDARDS);
  }

  private static Horse horse() {
    return Horses.adult(500).build();
  }

  private static Foods hay(String id) {
    return Foods.of(id, "grass-hay").with(AnalyteCode.WSC, 9, 1).with(AnalyteCode.STARCH, 1, 0.5);
  }

  private static Portion fed(Foodstuff food, double kg) {
    return Portion.of(food, kg, true);
  }

  private static String words(Diet diet, String code) {
    return diet.notes().stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("");
  }

  @Test
  void theFloorIsSaidOnBothBases() {
    // 8.5 kg of 88 % dry matter: 1.70 % of 500 kg as fed and 1.496 % as dry matter, under 1.5 %
    Diet diet = diet(horse(), fed(hay("a").dm(88).lot(), 8.5));
    assertEquals(Floor.WARN, diet.intake().floor());
    assertEquals(
        "forage makes 1.50 % of body weight as dry matter (1.70 % as fed), below the floor of 1.50"
            + " % as dry matter",
        words(diet, "forage-warn"));
  }

  @Test
  void soakedHayIsJudgedWithItsDryValuesAndSaysSo() {
    Foodstuff lot = hay("a").lot();
    Diet dry = diet(horse(), fed(lot, 9));
    Diet soaked = diet(horse(), fed(lot, 9).withPrepared("soaked"));
    Measured a = dry.content(AnalyteCode.NSC_WSC).orElseThrow();
    Measured b = soaked.content(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(a.best(), b.best());
    assertEquals(a.u(), b.u());
    for (Nutrient nutrient : Nutrient.values()) {
      assertEquals(dry.line(nutrient).supply(), soaked.line(nutrient).supply());
    }
    assertFalse(dry.hasNote("soaked"));
    String words = words(soaked, "soaked");
    assertTrue(words.contains("no loss of sugar is counted (single hays lost 0 to 53 %)"), words);
    assertTrue(words.contains("energy (5 to 15 %) and digestible protein (35 %)"), words);
  }

  @Test
  void steamedHayHasItsOwnWords() {
    Diet diet = diet(horse(), fed(hay("a").lot(), 9).withPrepared("steamed"));
    assertTrue(words(diet, "steamed").contains("(126 to 122 g/kg WSC in one trial)"));
    assertFalse(diet.hasNote("soaked"));
  }

  @Test
  void whatIsEatenWithItsWaterLosesNothing() {
    // label() makes pellets
    Foodstuff pellets = Foods.of("p", "controlled-forage").with(AnalyteCode.NSC_WSC, 8, 0.4).feed();
    assertFalse(diet(horse(), fed(pellets, 9).withPrepared("soaked")).hasNote("soaked"));
  }

  @Test
  void aPortionKeepsHowItIsPreparedWhenItIsChanged() {
    Portion soaked = fed(hay("a").lot(), 9).withPrepared("soaked");
    assertEquals("soaked", soaked.withKg(3).prepared());
    assertEquals("soaked", ComingRation.atEqualDryMatter(soaked, hay("b").dm(60).lot()).prepared());
    RationItem item = new RationItem("a", "", 4, "kg", true, OptionalInt.empty(), "soaked");
    RationAmounts amounts =
        RationAmounts.of(
            horse(),
            Rows.ration(item),
            (id, batch) -> java.util.Optional.of(hay("a").lot()),
            List.of(),
            Horses.DAY,
            Foods.STANDARDS);
    assertEquals("soaked", amounts.portions().get(0).prepared());
  }

  @Test
  void grassIsNoSmallAmountAndNotCounted() {
    Diet few =
        diet(
            Horses.adult(500).grazing(OptionalDouble.of(3)).condition(5).build(),
            fed(hay("a").lot(), 9));
    assertTrue(words(few, "grazing-not-analysed").contains("it grazes 3 hours a day"));
    assertEquals(
        "few hours of grass are no small amount: ponies have eaten up to 1 % of body weight as dry"
            + " matter in 3 hours (from memory)",
        words(few, "grazing-few-hours"));
    assertTrue(few.energy().words().endsWith("; the grass is not counted"));
    Diet long_ =
        diet(Horses.adult(500).grazing(OptionalDouble.of(3.5)).build(), fed(hay("a").lot(), 9));
    assertFalse(long_.hasNote("grazing-few-hours"));
    assertFalse(diet(horse(), fed(hay("a").lot(), 9)).energy().words().contains("grass"));
  }

  @Test
  void aMuzzleIsSaidToLeaveSome() {
    Horse muzzled = Horses.adult(500).grazing(OptionalDouble.of(5)).muzzled().build();
    assertTrue(diet(muzzled, fed(hay("a").lot(), 9)).hasNote("grazing-muzzled"));
    Horse bare = Horses.adult(500).grazing(OptionalDouble.of(5)).build();
    assertFalse(diet(bare, fed(hay("a").lot(), 9)).hasNote("grazing-muzzled"));
    Horse indoors = Horses.adult(500).muzzled().build();
    assertFalse(diet(indoors, fed(hay("a").lot(), 9)).hasNote("grazing-muzzled"));
  }

  @Test
  void aWeightByTapeOrGuessIsSaidWithItsError() {
    Portion hay = fed(hay("a").lot(), 9);
    assertTrue(
        words(diet(Horses.adult(500).weighedBy(WeightBy.TAPE).build(), hay), "weight-low-end")
            .startsWith("the weight is by tape and may be 5 % off"));
    assertTrue(
        words(diet(Horses.adult(500).weighedBy(WeightBy.GUESS).build(), hay), "weight-low-end")
            .startsWith("the weight is by guess and may be 10 % off"));
    assertFalse(diet(horse(), hay).hasNote("weight-low-end"));
  }

  @ParameterizedTest
  @EnumSource(HorseType.class)
  void adLibIsAnAssumptionByTypeWithAWideSpread(HorseType type) {
    Horse horse = Horses.adult(200).type(type).build();
    Portion portion =
        RationAmounts.of(
                horse,
                Rows.ration(Rows.item("a", 0, "ad-lib")),
                (id, batch) -> java.util.Optional.of(hay("a").dm(80).lot()),
                List.of(),
                Horses.DAY,
                Foods.STANDARDS)
            .portions()
            .get(0);
    // intake.csv: 2.25 % of body weight, ponies 2.5 %, donkeys 1.55 %; spread a quarter of it
    double percent =
        switch (type) {
          case HORSE, MINIATURE -> 2.25;
          case PONY -> 2.5;
          case DONKEY -> 1.55;
        };
    assertEquals(percent * 2, portion.kgDm(), 1e-12);
    assertEquals(percent * 2 / 0.8 / 4, portion.kgU(), 1e-12);
    Diet diet = diet(horse, portion);
    assertTrue(words(diet, "amount-assumed").contains("(assumed for a " + type.code() + ")"));
    double u = diet.line(Nutrient.DM).supply().u();
    assertEquals(percent * 2 / 4, u, 1e-9);
  }

  @Test
  void forageUnderHalfOfTheDryMatterIsSaid() {
    Foodstuff oats = Foods.of("o", "concentrate").with(AnalyteCode.NSC_WSC, 50, 1).feed();
    Foodstuff hay = hay("a").lot();
    assertFalse(diet(horse(), fed(hay, 5), Portion.of(oats, 5, false)).hasNote("forage-share-low"));
    assertTrue(
        diet(horse(), fed(hay, 4.9), Portion.of(oats, 5.1, false)).hasNote("forage-share-low"));
  }

  private static Portion oats(double kg, int meals) {
    return new Portion(
        Foods.of("o", "concentrate")
            .dm(100)
            .with(AnalyteCode.STARCH, 50, 0)
            .with(AnalyteCode.WSC, 5, 0)
            .feed(),
        kg,
        0,
        false,
        OptionalInt.of(meals));
  }

  @Test
  void aBucketMealOverHalfAPercentOfTheWeightIsSaidAndHayNever() {
    Portion hay = fed(hay("a").lot(), 30);
    assertFalse(diet(horse(), hay).hasNote("bucket-meal-large"));
    assertFalse(diet(horse(), hay, oats(5, 2)).hasNote("bucket-meal-large"));
    assertTrue(diet(horse(), hay, oats(5.2, 2)).hasNote("bucket-meal-large"));
  }

  @Test
  void starchOfTheDayIsHeldAgainstTwoGramsPerKilogram() {
    // hay: 9 kg of 90 % dry matter with 1 % starch, 81 g; 500 kg take 1000 g
    Portion hay = fed(hay("a").lot(), 9);
    assertFalse(diet(horse(), hay, oats(1.83, 3)).hasNote("starch-day"));
    assertTrue(diet(horse(), hay, oats(1.85, 3)).hasNote("starch-day"));
  }

  private static Diet minerals(double zinc, double copper) {
    return diet(
        horse(),
        fed(hay("a").with(AnalyteCode.ZN, zinc, 0).with(AnalyteCode.CU, copper, 0).lot(), 10));
  }

  @Test
  void zincToCopperIsSaidOutsideThreeToFive() {
    assertFalse(minerals(30, 10).hasNote("zn-cu-unusual"));
    assertFalse(minerals(50, 10).hasNote("zn-cu-unusual"));
    assertTrue(minerals(29, 10).hasNote("zn-cu-unusual"));
    assertTrue(words(minerals(51, 10), "zn-cu-unusual").startsWith("zinc to copper is 5.1 to 1"));
    Portion silent = Portion.of(Foods.of("b", "balancer").feed(), 0.4, false);
    Portion odd = fed(hay("a").with(AnalyteCode.ZN, 90, 0).with(AnalyteCode.CU, 10, 0).lot(), 10);
    assertFalse(diet(horse(), odd, silent).hasNote("zn-cu-unusual"));
  }

  @Test
  void belowAndNotAssuredAndAssumedAreToldApart() {
    // 500 kg need 100 mg copper and 400 mg zinc; 9 kg of dry matter
    Foods made = hay("a").with(AnalyteCode.CU, 10, 0).with(AnalyteCode.ZN, 46, 2);
    Diet diet = diet(horse(), fed(made.lot(), 10));
    assertTrue(words(diet, "nutrients-below").contains("copper (90 % of the need)"));
    assertFalse(words(diet, "nutrients-below").contains("zinc"));
    assertTrue(words(diet, "nutrients-not-assured").contains("zinc"));
    assertFalse(words(diet, "nutrients-not-assured").contains("copper"));
    assertFalse(words(diet, "nutrients-assumed").contains("copper"));
    assertTrue(words(diet, "nutrients-assumed").contains("manganese"));
    assertTrue(words(diet, "nutrients-unknown").contains("vitamin E"));
  }

  @Test
  void saltIsSaidInGramsButNotForAHorseThatTheVetMustSeeFirst() {
    // 500 kg need 10 g sodium; 9 kg of 0.05 % give 4.5 g; 5.5 g x 2.542 = 13.98 g of salt
    Foodstuff poor = hay("a").with(AnalyteCode.NA, 0.05, 0).lot();
    assertTrue(
        words(diet(horse(), fed(poor, 10)), "salt").contains("about 14 g of plain salt a day"));
    Horse acute = Horses.adult(500).with("laminitis-acute").build();
    String words = words(diet(acute, fed(poor, 10)), "salt");
    assertTrue(words.endsWith("offer plain salt, with water at hand"), words);
    Foodstuff rich = hay("a").with(AnalyteCode.NA, 0.2, 0).lot();
    assertFalse(diet(horse(), fed(rich, 10)).hasNote("salt"));
  }

  @Test
  void vitaminEOfHayIsSaidUnlessItIsThere() {
    Diet silent = diet(horse(), fed(hay("a").lot(), 10));
    assertTrue(words(silent, "vitamin-e").contains("against a need of 500 IU a day"));
    Diet rich = diet(horse(), fed(hay("a").with(AnalyteCode.VIT_E, 60, 0).lot(), 10));
    assertFalse(rich.hasNote("vitamin-e"));
  }

  @Test
  void aDonkeyIsNoSmallHorse() {
    Foodstuff lot = hay("a").with(AnalyteCode.DE, 2, 0).lot();
    Horse donkey = Horses.adult(200).type(HorseType.DONKEY).build();
    Diet diet = diet(donkey, fed(lot, 4));
    assertTrue(words(diet, "energy-factor").contains("0.75 of a horse's"));
    double horse =
        diet(Horses.adult(200).build(), fed(lot, 4)).line(Nutrient.DE).requirement().orElseThrow();
    assertEquals(0.75 * horse, diet.line(Nutrient.DE).requirement().orElseThrow(), 1e-12);
    assertFalse(diet(horse(), fed(lot, 9)).hasNote("energy-factor"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sick", "hyperlipaemia", "donkey-hyperlipaemia", "liver-disease"})
  void theSickAreNeverRestrictedWithoutAVetPlan(String condition) {
    Portion hay = fed(hay("a").dm(100).lot(), 7);
    assertEquals(
        Floor.NEEDS_VET_PLAN,
        diet(Horses.adult(500).with(condition).build(), hay).intake().floor());
    assertEquals(
        Floor.WARN,
        diet(Horses.adult(500).with(condition).vetPlan().build(), hay).intake().floor());
    assertEquals(Floor.WARN, diet(horse(), hay).intake().floor());
  }

  @Test
  void aFatMareInFoalIsNotToldToEatLess() {
    Foodstuff rich = hay("a").with(AnalyteCode.DE, 3, 0).lot();
    Horses mare = Horses.adult(500).status(HorseStatus.PREGNANT, Level.NONE).month(8).condition(8);
    String words = diet(mare.build(), fed(rich, 10)).energy().words();
    assertTrue(words.contains("it will gain more; donkeys, miniatures, pregnant"), words);
    String free = diet(mare.vetPlan().build(), fed(rich, 10)).energy().words();
    assertFalse(free.contains("vet plan"), free);
    String gelding = diet(Horses.adult(500).condition(8).build(), fed(rich, 10)).energy().words();
    assertFalse(gelding.contains("vet plan"), gelding);
  }

  @ParameterizedTest
  @EnumSource(HorseType.class)
  void donkeysMiniaturesAndTheProtectedAreNeverRestricted(HorseType type) {
    boolean always = type == HorseType.DONKEY || type == HorseType.MINIATURE;
    assertEquals(always, rule(Horses.adult(200).type(type)).isNeverRestricted());
    assertTrue(
        rule(Horses.adult(200).type(type).status(HorseStatus.LACTATING, Level.NONE).month(2))
            .isNeverRestricted());
  }

  private static IntakeRule rule(Horses horse) {
    return Foods.STANDARDS.intakeRule(horse.build());
  }

  @Test
  void vitaminCeilingsAreHeldAgainstTheUpperBound() {
    // 16 000 IU A and 1000 IU E per kg of dry matter, 44 IU D per kg of body weight; 9 kg, 500 kg
    assertEquals(NutrientStatus.MEETS, vitamin(AnalyteCode.VIT_A, 15_900).status());
    assertEquals(NutrientStatus.ABOVE_CEILING, vitamin(AnalyteCode.VIT_A, 16_100).status());
    assertEquals(NutrientStatus.MEETS, vitamin(AnalyteCode.VIT_E, 990).status());
    assertEquals(NutrientStatus.ABOVE_CEILING, vitamin(AnalyteCode.VIT_E, 1010).status());
    assertEquals(NutrientStatus.MEETS, vitamin(AnalyteCode.VIT_D, 2440).status());
    assertEquals(NutrientStatus.ABOVE_CEILING, vitamin(AnalyteCode.VIT_D, 2450).status());
  }

  private static NutrientLine vitamin(AnalyteCode code, double iuPerKg) {
    Nutrient nutrient = Nutrient.findByCode(code.value()).orElseThrow();
    return diet(horse(), fed(hay("a").with(code, iuPerKg, 0).lot(), 10)).line(nutrient);
  }
}
