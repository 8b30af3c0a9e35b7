package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** How a ration is evaluated: sources of the rules are the design's definitions and the tables. */
class DietTest {
  private static final FeedingStandards STANDARDS = Foods.STANDARDS;

  private static Diet diet(Horse horse, Portion... portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, STANDARDS);
    return Diet.evaluate(horse, List.of(portions), needs, STANDARDS);
  }

  private static Horse horse() {
    return Horses.adult(500).build();
  }

  private static Foods hay(String id, double wsc, double starch) {
    return Foods.of(id, "grass-hay")
        .with(AnalyteCode.WSC, wsc, 1.5)
        .with(AnalyteCode.STARCH, starch, 0.8);
  }

  @Test
  void aBlendHoldsTheDryMatterWeightedMean() {
    Diet diet =
        diet(
            horse(),
            Portion.of(hay("a", 14, 1).dm(90).lot(), 4, true),
            Portion.of(hay("b", 8, 2).dm(60).lot(), 6, true));
    // 3.6 kg of 15 % and 3.6 kg of 10 %
    Measured nsc = diet.content(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(12.5, nsc.best(), 1e-12);
    assertEquals(900, diet.gramsPerDay(AnalyteCode.NSC_WSC).best(), 1e-9);
    // each u is √(1.5² + 0.8²) = 1.7; half and half of independent lots: 1.7/√2
    assertEquals(1.7 / Math.sqrt(2), nsc.u(), 1e-12);
  }

  @Test
  void thereCannotBeLessThanNoneOfAPoorItem() {
    // 0.2 kg ± 2 kg of poor hay beside 6 kg of 9.2 %: at most half of it (k = 1) may be missing
    Foodstuff rich = Foods.of("r", "grass-hay").dm(100).with(AnalyteCode.NSC_WSC, 9.2, 0).lot();
    Foodstuff poor = Foods.of("p", "grass-hay").dm(100).with(AnalyteCode.NSC_WSC, 3, 0).lot();
    Portion some = new Portion(poor, 0.2, 2, true, OptionalInt.empty());
    Measured nsc =
        diet(horse(), Portion.of(rich, 6, true), some).content(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(9, nsc.best(), 1e-12);
    assertEquals(6 * 0.1 / 6.2, nsc.u(), 1e-12);
    // more of a rich item has no such bound: (9.2 - 3.2) x 2 / 6.2
    Portion much = new Portion(rich, 0.2, 2, true, OptionalInt.empty());
    Measured other =
        diet(horse(), Portion.of(poor, 6, true), much).content(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(6 * 2 / 6.2, other.u(), 1e-9);
  }

  @Test
  void oneLotFedTwiceKeepsItsWholeUncertainty() {
    Foodstuff lot = hay("a", 14, 1).lot();
    Diet diet = diet(horse(), Portion.of(lot, 4, true), Portion.of(lot, 5, true));
    assertEquals(1.7, diet.content(AnalyteCode.NSC_WSC).orElseThrow().u(), 1e-12);
  }

  @Test
  void typicalValuesNeverCountForALimit() {
    Diet diet = diet(horse(), Portion.of(Foods.of("a", "grass-hay").unanalysedLot(), 10, true));
    assertTrue(diet.content(AnalyteCode.NSC_WSC).isEmpty());
    assertTrue(diet.content(AnalyteCode.K).isEmpty());
    assertEquals(List.of("a"), diet.missingFor(AnalyteCode.K));
    // but potassium is supplied all the same, and said to be assumed
    assertEquals(167.4, diet.line(Nutrient.K).supply().best(), 1e-9);
    assertEquals(Origin.ASSUMED, diet.line(Nutrient.K).supply().origin());
  }

  @Test
  void aSmallSilentItemTakesTheHighValueOfItsRole() {
    Foodstuff lot = hay("a", 9, 1).lot();
    Foodstuff balancer = Foods.of("bal", "balancer").feed();
    Diet diet = diet(horse(), Portion.of(lot, 9.6, true), Portion.of(balancer, 0.4, false));
    Measured nsc = diet.content(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(0.96 * 10 + 0.04 * 35, nsc.best(), 1e-9);
    assertTrue(diet.hasNote("role-high-value"));
  }

  @Test
  void aLargeSilentItemLeavesTheDietOpenAbove() {
    Foodstuff lot = hay("a", 9, 1).lot();
    Foodstuff mash = Foods.of("mash", "concentrate").feed();
    Diet diet = diet(horse(), Portion.of(lot, 9.5, true), Portion.of(mash, 0.5, false));
    Measured nsc = diet.content(AnalyteCode.NSC_WSC).orElseThrow();
    assertFalse(nsc.isBoundedAbove());
    assertEquals(9.5, nsc.lower(), 1e-9);
    assertEquals(List.of("mash b1"), diet.missingFor(AnalyteCode.NSC_WSC));
  }

  @Test
  void twoSmallSilentItemsCountTogether() {
    Foodstuff lot = hay("a", 9, 1).lot();
    Foodstuff one = Foods.of("x", "balancer").feed();
    Foodstuff two = Foods.of("y", "supplement").feed();
    Diet diet =
        diet(
            horse(),
            Portion.of(lot, 9.4, true),
            Portion.of(one, 0.3, false),
            Portion.of(two, 0.3, false));
    assertEquals(List.of("x b1", "y b1"), diet.missingFor(AnalyteCode.NSC_WSC));
  }

  @Test
  void sugarWithoutStarchIsOnlyABoundFromBelow() {
    Foodstuff lot = Foods.of("a", "grass-hay").with(AnalyteCode.WSC, 12, 1.5).lot();
    Measured nsc = diet(horse(), Portion.of(lot, 10, true)).content(AnalyteCode.NSC_WSC).get();
    assertEquals(12, nsc.lower());
    assertFalse(nsc.isBoundedAbove());
  }

  @Test
  void aLowerEndHoldsNoLabelMaximum() {
    Foodstuff pellets =
        Foods.of("p", "balancer")
            .with(
                AnalyteCode.NSC_WSC,
                Measured.atMost(Unit.PERCENT, Basis.DRY_MATTER, 11, Foods.reported("11")))
            .feed();
    Foodstuff part = Foods.of("h", "grass-hay").with(AnalyteCode.WSC, 13.5, 1).lot();
    Diet diet = diet(horse(), Portion.of(part, 9, true), Portion.of(pellets, 1, false));

    Measured nsc = diet.content(AnalyteCode.NSC_WSC).orElseThrow();

    assertFalse(nsc.isBoundedAbove());
    assertEquals(0.9 * 13.5, nsc.best(), 1e-12, "what the label allows is no least");
    assertEquals(nsc.lower(), nsc.best(), 0);
  }

  @Test
  void theSumOfWscAndStarchBoundsThatOfEscAndStarchFromAbove() {
    Foodstuff lot = hay("a", 9, 1).lot();
    Measured esc = diet(horse(), Portion.of(lot, 10, true)).content(AnalyteCode.NSC_ESC).get();
    assertEquals(10, esc.upper());
    assertEquals(1, esc.lower(), 1e-12);
  }

  @Test
  void aLabelMaximumIsTakenAtItsUpperEndWithoutUncertainty() {
    Measured max =
        STANDARDS.ofKind(
            AnalyteCode.NSC_WSC,
            Unit.PERCENT,
            Basis.DRY_MATTER,
            12,
            0.05,
            "max",
            Foods.reported("12"));
    Foodstuff feed = Foods.of("f", "controlled-forage").with(AnalyteCode.NSC_WSC, max).feed();
    Measured nsc = diet(horse(), Portion.of(feed, 8, true)).content(AnalyteCode.NSC_WSC).get();
    assertEquals(12, nsc.upper(), 1e-12);
    assertEquals(0, nsc.u());
  }

  @Test
  void kindsOfFeedValuesHaveTheirOwnUncertainty() {
    // 0.4 points for sugars of a batch: an assumption of the tables
    assertEquals(0.4, ofKind(AnalyteCode.WSC, 8, "batch").u());
    assertEquals(2.0, ofKind(AnalyteCode.WSC, 8, "typical").u());
    assertEquals(0.05 * 30, ofKind(AnalyteCode.CU, 30, "batch").u(), 1e-12);
  }

  private static Measured ofKind(AnalyteCode code, double value, String kind) {
    return STANDARDS.ofKind(
        code, Unit.PERCENT, Basis.DRY_MATTER, value, 0.05, kind, Foods.reported("" + value));
  }

  @Test
  void bucketMealsTakeEveryItemAtItsAmountPerMeal() {
    Foodstuff oats =
        Foods.of("oats", "concentrate")
            .dm(90)
            .with(AnalyteCode.STARCH, 45, 0.4)
            .with(AnalyteCode.WSC, 5, 0.4)
            .with(AnalyteCode.K, 0.5, 0)
            .feed();
    Portion twice = new Portion(oats, 2, 0, false, OptionalInt.of(2));
    Diet diet = diet(horse(), Portion.of(hay("a", 9, 1).lot(), 8, true), twice);
    // 1 kg as fed, 0.9 kg DM: 405 g starch, 450 g NSC, 4.5 g K; per kg of 500 kg
    BucketMeal meal = diet.bucketMeal();
    assertEquals(1, meal.kgAsFed(), 1e-12);
    assertEquals(0.81, meal.perKgBodyWeight(AnalyteCode.STARCH).best(), 1e-12);
    assertEquals(0.9, meal.perKgBodyWeight(AnalyteCode.NSC_WSC).best(), 1e-12);
    assertEquals(4.5, meal.get(AnalyteCode.K).best(), 1e-12);
    assertEquals((810 + 72) / 500.0, diet.starchPerKgBodyWeight().best(), 1e-12);
  }

  @Test
  void hayIsNoBucketMeal() {
    Diet diet = diet(horse(), Portion.of(hay("a", 9, 1).lot(), 8, true));
    assertTrue(diet.bucketMeal().isEmpty());
    assertEquals(0, diet.bucketMeal().get(AnalyteCode.NSC_WSC).best());
  }

  @Test
  void anItemWithAnUnknownNutrientLeavesItUnknownUnlessTheRestIsEnough() {
    Foods known = hay("a", 9, 1).with(AnalyteCode.VIT_E, 30, 0);
    Foodstuff straw = Foods.of("s", "straw").with(AnalyteCode.VIT_D, 1, 0).lot();
    Diet low = diet(horse(), Portion.of(known.lot(), 8, true), Portion.of(straw, 1, true));
    assertEquals(NutrientStatus.UNKNOWN, low.line(Nutrient.VIT_E).status());
    assertEquals(Double.POSITIVE_INFINITY, low.line(Nutrient.VIT_E).supply().high());

    Foods rich = hay("a", 9, 1).with(AnalyteCode.VIT_E, 90, 0);
    Diet enough = diet(horse(), Portion.of(rich.lot(), 8, true), Portion.of(straw, 1, true));
    assertEquals(NutrientStatus.MEETS, enough.line(Nutrient.VIT_E).status());
  }

  @Test
  void belowGoesByTheBestValueAndNotAssuredByTheLowerBound() {
    // 500 kg need 100 mg copper; 9 kg DM
    assertEquals(NutrientStatus.BELOW, copper(11, 0).status());
    assertEquals(NutrientStatus.NOT_ASSURED, copper(12, 1).status());
    assertEquals(NutrientStatus.MEETS, copper(14, 1).status());
    assertEquals(14 * 9 - 2 * 9, copper(14, 1).supply().low(), 1e-9);
    // tolerance 250 mg/kg: by the upper bound
    assertEquals(NutrientStatus.ABOVE_CEILING, copper(240, 6).status());
    assertEquals(250 * 9, copper(240, 6).maxTolerable().orElseThrow(), 1e-9);
    assertEquals(NutrientStatus.MEETS, copper(240, 4).status());
  }

  private static NutrientLine copper(double mgPerKg, double u) {
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.CU, mgPerKg, u).lot();
    return diet(horse(), Portion.of(lot, 10, true)).line(Nutrient.CU);
  }

  @Test
  void nobodyIsAlarmedByTheSpreadOfAnAssumedValue() {
    // typical iron 208 ± 310 mg/kg against 500: unknown to be high, not known to be
    Diet diet = diet(horse(), Portion.of(Foods.of("a", "grass-hay").unanalysedLot(), 10, true));
    NutrientLine iron = diet.line(Nutrient.FE);
    assertTrue(iron.supply().high() > iron.maxTolerable().orElseThrow());
    assertTrue(iron.status() != NutrientStatus.ABOVE_CEILING);
  }

  @Test
  void potassiumPassesItsExtrapolatedCeilingWithoutAlarm() {
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.K, 2.2, 0.1).lot();
    assertEquals(
        NutrientStatus.MEETS, diet(horse(), Portion.of(lot, 10, true)).line(Nutrient.K).status());
  }

  @Test
  void energyIsNeverJudgedByABound() {
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.DE, 1.9, 0.3).lot();
    Diet diet = diet(horse(), Portion.of(lot, 10, true));
    assertEquals(NutrientStatus.MEETS, diet.line(Nutrient.DE).status());
  }

  @Test
  void energyIsReadAgainstBodyCondition() {
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.DE, 1.5, 0).lot();
    assertEquals("energy-short-fat", energy(Horses.adult(500).condition(8), lot));
    assertEquals("energy-short-thin", energy(Horses.adult(500).condition(3), lot));
    assertEquals("energy-short-unseen", energy(Horses.adult(500), lot));
  }

  @Test
  void energyThatIsOverByItselfIsOverWhateverElseIsFed() {
    Portion hay = Portion.of(hay("a", 9, 1).with(AnalyteCode.DE, 2.2, 0).lot(), 10, true);
    Portion thin = Portion.of(hay("a", 9, 1).with(AnalyteCode.DE, 1.5, 0).lot(), 10, true);
    Portion silent = Portion.of(Foods.of("b", "balancer").feed(), 0.4, false);
    Horse fat = Horses.adult(500).condition(8).build();
    assertEquals("energy-over-fat", diet(fat, hay, silent).energy().code());
    assertEquals("energy-unknown-fat", diet(fat, thin, silent).energy().code());
  }

  private static String energy(Horses horse, Foodstuff lot) {
    return diet(horse.build(), Portion.of(lot, 10, true)).energy().code();
  }

  @Test
  void calciumToPhosphorusBelowOneIsSaid() {
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.CA, 0.2, 0).with(AnalyteCode.P, 0.3, 0).lot();
    Diet diet = diet(horse(), Portion.of(lot, 10, true));
    assertEquals(0.2 / 0.3, diet.line(Nutrient.CA_P).supply().best(), 1e-12);
    assertEquals(NutrientStatus.BELOW, diet.line(Nutrient.CA_P).status());
    assertTrue(diet.hasNote("ca-p-inverted"));
  }

  @Test
  void floorsAreHeldAgainstTheLowEndOfTheWeight() {
    Foodstuff lot = hay("a", 9, 1).dm(100).lot();
    // 7.2 kg DM: 1.44 % of 500 kg, 1.516 % of 475 kg
    assertEquals(Floor.WARN, floor(Horses.adult(500), lot, 7.2));
    assertEquals(Floor.FINE, floor(Horses.adult(500).weighedBy(WeightBy.TAPE), lot, 7.2));
  }

  @Test
  void floorsOfHorsesPoniesDonkeysAndTheProtectedDiffer() {
    Foodstuff lot = hay("a", 9, 1).dm(100).lot();
    assertEquals(Floor.NEEDS_VET_PLAN, floor(Horses.adult(500), lot, 6.0));
    assertEquals(Floor.WARN, floor(Horses.adult(500).vetPlan(), lot, 6.0));
    assertEquals(Floor.REFUSE, floor(Horses.adult(500).vetPlan(), lot, 4.9));
    assertEquals(Floor.FINE, floor(Horses.adult(500).type(HorseType.DONKEY), lot, 6.5));
    assertEquals(Floor.NEEDS_VET_PLAN, floor(Horses.adult(500).type(HorseType.DONKEY), lot, 6.4));
    assertEquals(
        Floor.NEEDS_VET_PLAN, floor(Horses.adult(100).type(HorseType.MINIATURE), lot, 1.4));
    Horses mare = Horses.adult(500).status(HorseStatus.PREGNANT, Level.NONE).month(9);
    assertEquals(Floor.NEEDS_VET_PLAN, floor(mare, lot, 7.0));
    assertEquals(Floor.NEEDS_VET_PLAN, floor(Horses.adult(500).with("sick"), lot, 7.0));
  }

  private static Floor floor(Horses horse, Foodstuff lot, double kg) {
    return diet(horse.build(), Portion.of(lot, kg, true)).intake().floor();
  }

  @Test
  void strawIsAShareOfTheForageAndDonkeysMayHaveMore() {
    Portion hay = Portion.of(hay("a", 9, 1).dm(90).lot(), 4, true);
    Portion straw = Portion.of(Foods.of("s", "straw").dm(90).lot(), 6, true);
    Diet horse = diet(horse(), hay, straw);
    assertEquals(0.6, horse.intake().strawShareOfForage(), 1e-12);
    assertTrue(horse.hasNote("straw-over-hard-cap"));
    Diet donkey = diet(Horses.adult(500).type(HorseType.DONKEY).build(), hay, straw);
    assertFalse(donkey.intake().isStrawOverUsualCap());
  }

  @Test
  void whatIsNotInTheBucketIsSaid() {
    Portion hay = Portion.of(hay("a", 9, 1).lot(), 10, true);
    assertTrue(diet(horse(), hay).isWhole());
    Diet grazing = diet(Horses.adult(500).grazing(OptionalDouble.of(4)).build(), hay);
    assertTrue(grazing.hasNote("grazing-not-analysed"));
    assertFalse(grazing.isWhole());
    assertTrue(
        diet(Horses.adult(500).grazing(OptionalDouble.empty()).build(), hay)
            .hasNote("grazing-not-asked"));
    assertTrue(
        diet(Horses.adult(500).extras(Extras.UNKNOWN).build(), hay).hasNote("extras-unknown"));
    assertTrue(diet(Horses.adult(500).herd("paddock").build(), hay).hasNote("shared-bale"));
  }

  @Test
  void saltHoldsNothingButSaltAndLeavesTheRestAsItIs() {
    Foodstuff salt =
        Foods.of("salt", "salt")
            .dm(100)
            .with(AnalyteCode.NA, 39.3, 0)
            .with(AnalyteCode.CL, 60.7, 0)
            .feed();
    Foodstuff lot = hay("a", 9, 1).with(AnalyteCode.CU, 12, 0).lot();
    Diet diet = diet(horse(), Portion.of(lot, 10, true), Portion.of(salt, 0.025, false));
    NutrientLine copper = diet.line(Nutrient.CU);
    assertTrue(copper.supply().isComplete());
    assertEquals(Origin.REPORTED, copper.supply().origin());
    assertEquals(7.2 + 9.825, diet.line(Nutrient.NA).supply().best(), 1e-9);
  }

  @Test
  void energyComesFromTheReportFirstAndElseFromTheFormula() {
    Foods hay =
        hay("a", 9, 1)
            .with(AnalyteCode.CP, 10, 0.5)
            .with(AnalyteCode.ADF, 38, 1)
            .with(AnalyteCode.NDF, 62, 1)
            .with(AnalyteCode.EE, 2.5, 0.2)
            .with(AnalyteCode.ASH, 8, 0.4);
    // requirements, section 7: 2.0555 Mcal/kg DM
    assertEquals(2.0555, hay.lot().find(AnalyteCode.DE).orElseThrow().best(), 0.00005);
    Foodstuff printed = hay.with(AnalyteCode.DE, 1.91, 0.1).lot();
    assertEquals(1.91, printed.find(AnalyteCode.DE).orElseThrow().best());
  }

  @Test
  void aCertificateWithSugarsReplacesAllSugarsOfTheLabel() {
    Foods label =
        Foods.of("f", "controlled-forage")
            .with(AnalyteCode.WSC, 9, 2)
            .with(AnalyteCode.STARCH, 2, 1)
            .with(AnalyteCode.NSC_WSC, 11, 2);
    Foods certificate = Foods.of("f", "controlled-forage").with(AnalyteCode.WSC, 7, 0.4);
    Foodstuff food = Foods.MAKER.ofFeed(label.label(), certificate.analysis());
    assertFalse(food.find(AnalyteCode.NSC_WSC).orElseThrow().isBoundedAbove());
  }

  @Test
  void supplyIsPartAssumedWhereOneLotWasReportedAndTheOtherNot() {
    Diet diet =
        diet(
            horse(),
            Portion.of(hay("a", 9, 1).with(AnalyteCode.CU, 12, 1).lot(), 5, true),
            Portion.of(Foods.of("b", "grass-hay").unanalysedLot(), 5, true));
    assertEquals("part-assumed", diet.line(Nutrient.CU).supply().origin().code());
  }
}
