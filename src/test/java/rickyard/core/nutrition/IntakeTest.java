package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much is given and how it stands against the lines of {@code config/intake.csv}. */
class IntakeTest {
  private static final Foodstuff HAY = Foods.of("hay", "grass-hay").dm(90).lot();
  private static final Foodstuff DRY = Foods.of("dry", "grass-hay").dm(100).lot();
  private static final Foodstuff STRAW = Foods.of("straw", "straw").dm(100).lot();
  private static final Foodstuff OATS = Foods.of("oats", "concentrate").dm(80).feed();

  /** The low end of a weight by tape is 95 % of it: 475 kg. */
  private static final Horse TAPED = Horses.adult(500).weighedBy(WeightBy.TAPE).build();

  private static final Horse WEIGHED = Horses.adult(500).build();

  private static Intake intake(Horse horse, Portion... portions) {
    return Intake.of(List.of(portions), horse, Foods.STANDARDS);
  }

  private static Portion fed(Foodstuff food, double kg) {
    return Portion.of(food, kg, true);
  }

  private static Diet diet(Horse horse, Portion... portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(portions), needs, Foods.STANDARDS);
  }

  private static String note(Diet diet, String code) {
    return diet.notes().stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("");
  }

  /** 4 + 6 kg of hay are 9 kg of dry matter, 2 kg of oats 1.6. */
  @Test
  void sharesOfTheWeightAreSaidOnBothBasesAndBothWeights() {
    Intake intake = intake(TAPED, fed(HAY, 4), fed(HAY, 6), Portion.of(OATS, 2, false));

    assertEquals(12, intake.kgAsFed(), 1e-12);
    assertEquals(10, intake.forageKgAsFed(), 1e-12);
    assertEquals(2.4, intake.asFedPercentOfWeight(), 1e-12);
    assertEquals(2.12, intake.dmPercentOfWeight(), 1e-12);
    assertEquals(100 * 10.6 / 475, intake.dmPercentOfJudgedWeight(), 1e-12);
    assertEquals(1.8, intake.foragePercentOfWeight(), 1e-12);
    assertEquals(100 * 9.0 / 475, intake.foragePercentOfJudgedWeight(), 1e-12);
    assertEquals(100 * 10.0 / 475, intake.forageAsFedPercentOfJudgedWeight(), 1e-12);
    assertEquals(9 / 10.6, intake.forageShare(), 1e-12);
  }

  @Test
  void nothingFedHasNoShares() {
    Intake none = intake(WEIGHED, fed(HAY, 0));
    Intake bucket = intake(WEIGHED, Portion.of(OATS, 2, false));

    assertEquals(0, none.forageShare());
    assertEquals(0, none.strawShareOfForage());
    assertEquals(0, bucket.strawShareOfForage());
    Diet empty = diet(WEIGHED, fed(HAY, 0));
    assertFalse(empty.hasNote("forage-share-low"), "there is no dry matter to be shared");
    assertEquals(0, empty.items().get(0).share());
    assertEquals(Optional.empty(), empty.content(Nutrient.CP.analyte()));
  }

  /** Floors at 1.0, 1.25 and 1.5 % of 500 kg; a billionth below one is at it. */
  @ParameterizedTest
  @CsvSource({
    "4.999, REFUSE",
    "4.999999995, NEEDS_VET_PLAN",
    "5, NEEDS_VET_PLAN",
    "6.249, NEEDS_VET_PLAN",
    "6.24999999375, WARN",
    "6.25, WARN",
    "7.499, WARN",
    "7.4999999925, FINE",
    "7.5, FINE"
  })
  void equalToAFloorIsAboveIt(double kgDm, Floor floor) {
    assertEquals(floor, intake(WEIGHED, fed(DRY, kgDm)).floor());
  }

  /** Usual cap 30 %, hard cap 50 % of the forage's dry matter. */
  @Test
  void strawUpToItsCapIsWithinIt() {
    assertFalse(ofStraw(0.2).isStrawOverUsualCap());
    assertFalse(ofStraw(0.3).isStrawOverUsualCap());
    assertFalse(ofStraw(0.3 * (1 + 1e-9)).isStrawOverUsualCap());
    assertTrue(ofStraw(0.301).isStrawOverUsualCap());
    assertFalse(ofStraw(0.301).isStrawOverHardCap());
    assertFalse(ofStraw(0.5).isStrawOverHardCap());
    assertFalse(ofStraw(0.5 * (1 + 1e-9)).isStrawOverHardCap());
    assertTrue(ofStraw(0.501).isStrawOverHardCap());
  }

  private static Intake ofStraw(double share) {
    return intake(WEIGHED, fed(STRAW, share * 8), fed(DRY, 8 - share * 8));
  }

  @Test
  void strawOverACapIsSaidWithTheCap() {
    Diet usual = diet(WEIGHED, fed(STRAW, 4), fed(DRY, 6));
    Diet hard = diet(WEIGHED, fed(STRAW, 6), fed(DRY, 4));
    Diet little = diet(WEIGHED, fed(STRAW, 2), fed(DRY, 8));

    assertEquals(
        "straw makes 40 % of the forage, more than is usual (30 % for its type)",
        note(usual, "straw-over-usual-cap"));
    assertEquals(
        "straw makes 60 % of the forage, more than is allowed (50 % for its type)",
        note(hard, "straw-over-hard-cap"));
    assertFalse(hard.hasNote("straw-over-usual-cap"));
    assertFalse(little.hasNote("straw-over-usual-cap"));
  }

  /** The usual most is 3 % of body weight: 15 kg of dry matter for 500 kg. */
  @Test
  void moreThanHorsesUsuallyEatIsSaid() {
    assertEquals("", note(diet(WEIGHED, fed(DRY, 15)), "intake-over-usual"));
    assertEquals("", note(diet(WEIGHED, fed(DRY, 15 * (1 + 1e-9))), "intake-over-usual"));
    assertEquals(
        "this is more dry matter than horses usually eat: 3.10 % of body weight, usually at most"
            + " 3.0 %",
        note(diet(WEIGHED, fed(DRY, 15.5)), "intake-over-usual"));
  }

  @Test
  void halfTheDryMatterFromForageIsEnough() {
    Portion bucket = Portion.of(OATS, 6.25, false); // 5 kg of dry matter

    assertFalse(diet(WEIGHED, fed(DRY, 5), bucket).hasNote("forage-share-low"));
    // 4 kg of oats' dry matter, and a billionth less than half of all from hay
    Portion less = Portion.of(OATS, 5, false);
    assertFalse(diet(WEIGHED, fed(DRY, 3.999999992), less).hasNote("forage-share-low"));
    assertEquals(
        "forage makes 49 % of the dry matter; at least 50 % is usual",
        note(diet(WEIGHED, fed(DRY, 4.8), bucket), "forage-share-low"));
  }

  /** Ad lib a horse is taken to eat 2.25 % of its weight, give or take 25 %. */
  @Test
  void anAmountThatWasNotWeighedIsSaidToBeAssumed() {
    assertFalse(diet(WEIGHED, fed(HAY, 9)).hasNote("amount-assumed"));
    assertEquals(
        "an amount was not weighed: fed ad lib, taken as 2.25 % of body weight of dry matter in"
            + " all, give or take 25 % (assumed for a horse)",
        note(diet(WEIGHED, new Portion(HAY, 9, 2, true, OptionalInt.empty())), "amount-assumed"));
  }

  /** First floor 1.5 %, usual most 3 % of the low end of the weight. */
  @Test
  void dryMatterItselfIsHeldAgainstTheFloorAndTheUsualMost() {
    NutrientLine weighed = diet(WEIGHED, fed(DRY, 9)).line(Nutrient.DM);
    NutrientLine taped = diet(TAPED, fed(DRY, 9)).line(Nutrient.DM);

    assertEquals(7.5, weighed.requirement().orElseThrow(), 1e-12);
    assertEquals(15, weighed.maxTolerable().orElseThrow(), 1e-12);
    assertEquals(7.125, taped.requirement().orElseThrow(), 1e-12);
    assertEquals(14.25, taped.maxTolerable().orElseThrow(), 1e-12);
  }

  private static IntakeRule rule(double warn, double vet, double refuse, double[] straw) {
    return new IntakeRule(
        HorseType.HORSE,
        false,
        OptionalDouble.of(warn),
        vet,
        refuse,
        3,
        2,
        25,
        straw[0],
        straw[1],
        new Source("intake.csv", 1, "assumed", "", Standing.ASSUMED));
  }

  @Test
  void floorsAndCapsMayCoincideAndNeverCross() {
    double[] none = {0, 0};
    assertEquals(1, rule(1, 1, 1, none).firstFloor());
    assertEquals(30, rule(1.5, 1.25, 1, new double[] {30, 30}).strawHardPercent());
    for (var wrong :
        List.<Executable>of(
            () -> rule(1.2, 1.25, 1, none),
            () -> rule(1.5, 0.9, 1, none),
            () -> rule(1.5, 1.25, 0, none))) {
      assertEquals(
          "floors out of order for horse",
          assertThrows(IllegalArgumentException.class, wrong).getMessage());
    }
    assertEquals(
        "straw caps out of order for horse",
        assertThrows(
                IllegalArgumentException.class, () -> rule(1.5, 1.25, 1, new double[] {31, 30}))
            .getMessage());
  }

  @Test
  void aHorseWeighsSomethingAndNotMoreThanOneAndAHalfTonnes() {
    assertEquals(1500, Horses.adult(1500).build().bodyWeightKg());
    for (double kg : new double[] {0, 1500.1}) {
      assertEquals(
          "body weight must be in (0, 1500] kg: " + kg,
          assertThrows(IllegalArgumentException.class, () -> Horses.adult(kg).build())
              .getMessage());
    }
  }
}
