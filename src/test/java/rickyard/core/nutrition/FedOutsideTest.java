package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AnalyteCode;

/** Grass, treats and other hay; and the meals of the bucket. */
class FedOutsideTest {
  private static final String RECORDED =
      "judged is the ration recorded: no grass, treats or other hay";

  private static Diet diet(Horses horse, Portion... portions) {
    Horse built = horse.build();
    Requirements needs = Requirements.of(built, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(built, List.of(portions), needs, Foods.STANDARDS);
  }

  private static Horses grazing() {
    return Horses.adult(500).condition(5).grazing(OptionalDouble.of(6));
  }

  private static Portion hay() {
    return Portion.of(
        Foods.of("a", "grass-hay")
            .dm(100)
            .with(AnalyteCode.WSC, 9, 1)
            .with(AnalyteCode.STARCH, 0, 0)
            .lot(),
        9,
        true);
  }

  private static Portion pasture(Foods grass) {
    return Portion.of(grass.dm(20).lot(), 5, true);
  }

  private static String note(Diet diet, String code) {
    return diet.notes().stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("");
  }

  @Test
  void grassThatNoItemStandsForIsSaidToBeLeftOut() {
    Diet diet = diet(grazing(), hay());

    assertEquals(
        RECORDED
            + "; it grazes 6 hours a day, and the pasture is not analysed: intake, floors and energy"
            + " are without the grass",
        note(diet, "grazing-not-analysed"));
    assertTrue(diet.energy().words().endsWith("; the grass is not counted"));
    assertFalse(diet.isWhole());
  }

  @Test
  void grassThatIsCountedButNotAnalysedIsSaidSo() {
    Diet diet = diet(grazing(), hay(), pasture(Foods.of("p", "pasture")));

    assertEquals(
        RECORDED + "; it grazes 6 hours a day, and the pasture is not analysed",
        note(diet, "grazing-not-analysed"));
    assertFalse(diet.energy().words().contains("grass"), diet.energy().words());
  }

  @Test
  void aPastureWithItsSugarsIsAForageLikeAnother() {
    Foods known = Foods.of("p", "pasture").with(AnalyteCode.NSC_WSC, 14, 1);
    Foods open = Foods.of("p", "pasture").with(AnalyteCode.WSC, 14, 1);

    assertTrue(diet(grazing(), hay(), pasture(known)).isWhole());
    assertFalse(diet(grazing(), hay(), pasture(open)).isWhole(), "without its starch");
    Portion analysedHay =
        Portion.of(Foods.of("b", "grass-hay").with(AnalyteCode.NSC_WSC, 9, 1).lot(), 2, true);
    assertFalse(diet(grazing(), analysedHay).isWhole(), "hay is no pasture");
  }

  @Test
  void aMuzzleIsLessGrassAndNotNone() {
    assertEquals(
        "a muzzle cuts what it grazes by about 80 % (from memory): less grass, not none",
        note(diet(grazing().muzzled(), hay()), "grazing-muzzled"));
    assertFalse(diet(grazing(), hay()).hasNote("grazing-muzzled"));
  }

  @ParameterizedTest
  @CsvSource({
    "UNKNOWN, extras-unknown, extras are not on record",
    "TREATS, extras-treats, it gets treats that nobody weighs",
    "SHARED, extras-shared, it eats of other horses' hay"
  })
  void whatNobodyWeighsIsSaid(Extras extras, String code, String words) {
    Diet diet = diet(Horses.adult(500).extras(extras), hay());

    assertEquals(RECORDED + "; " + words, note(diet, code));
    assertFalse(diet.isWhole());
  }

  private static Portion bucket(double kg, OptionalInt meals) {
    return new Portion(
        Foods.of("o", "concentrate")
            .dm(80)
            .with(AnalyteCode.STARCH, 50, 0)
            .with(AnalyteCode.WSC, 5, 0)
            .feed(),
        kg,
        0,
        false,
        meals);
  }

  private static boolean isOneMealAssumed(OptionalInt ofHorse, Portion... portions) {
    return diet(Horses.adult(500).meals(ofHorse), portions).hasNote("meals-unknown");
  }

  @Test
  void mealsThatNobodySaidAreTakenAsOneWhereThereIsABucket() {
    OptionalInt none = OptionalInt.empty();

    assertTrue(isOneMealAssumed(none, hay(), bucket(1, none)));
    assertFalse(isOneMealAssumed(OptionalInt.of(3), hay(), bucket(1, none)));
    assertFalse(isOneMealAssumed(none, hay(), bucket(1, OptionalInt.of(2))));
    assertFalse(isOneMealAssumed(none, hay(), bucket(0, none)));
    assertFalse(isOneMealAssumed(none, hay()));
  }

  /** Two feeds in three and in two meals: 3/3 + 1/2 = 1.5 kg, 80 % of it dry matter. */
  @Test
  void theLargestMealHoldsAMealOfEachFeed() {
    Foodstuff bran = Foods.of("b", "concentrate").dm(80).with(AnalyteCode.K, 1, 0).feed();
    Portion unsure = new Portion(bran, 1, 0.5, false, OptionalInt.of(2));
    BucketMeal meal =
        diet(Horses.adult(500), hay(), bucket(3, OptionalInt.of(3)), unsure).bucketMeal();

    assertFalse(meal.isEmpty());
    assertEquals(1.5, meal.kgAsFed(), 1e-12);
    assertEquals(1.2, meal.kgDm(), 1e-12);
    // 0.4 kg ± 0.2 kg of dry matter with 1 %: 4 ± 2 g; nobody knows the oats'
    assertEquals(4, meal.get(AnalyteCode.K).best(), 1e-12);
    assertEquals(2, meal.get(AnalyteCode.K).u(), 1e-12);
    assertEquals(List.of("o b1"), meal.get(AnalyteCode.K).missing());
    assertEquals(List.of("b b1"), meal.get(AnalyteCode.STARCH).missing());
  }

  @Test
  void aFeedThatIsNotGivenLeavesNothingOpen() {
    BucketMeal meal = diet(Horses.adult(500), hay(), bucket(0, OptionalInt.empty())).bucketMeal();

    assertEquals(List.of(), meal.get(AnalyteCode.K).missing());
    assertTrue(meal.isEmpty());
  }

  /** At most 0.5 % of body weight a meal: 2.5 kg for 500 kg; a billionth more is no more. */
  @Test
  void aMealOfHalfAPerCentOfTheWeightIsNotTooLarge() {
    OptionalInt one = OptionalInt.of(1);

    assertFalse(diet(Horses.adult(500), hay(), bucket(2.5, one)).hasNote("bucket-meal-large"));
    assertFalse(
        diet(Horses.adult(500), hay(), bucket(2.5 * (1 + 1e-9), one)).hasNote("bucket-meal-large"));
    assertEquals(
        "the largest bucket meal makes 0.60 % of body weight as fed; at most 0.5 % is advised: give"
            + " it in more meals",
        note(diet(Horses.adult(500), hay(), bucket(3, one)), "bucket-meal-large"));
  }

  /**
   * 2.5 kg of 80 % dry matter with half starch are 1000 g: 2 g per kg of 500 kg; a billionth more
   * is no more.
   */
  @Test
  void starchOfMoreThanTwoGramsPerKilogramADayIsSaid() {
    OptionalInt five = OptionalInt.of(5);
    Portion unknown = Portion.of(Foods.of("x", "concentrate").dm(100).feed(), 2, false);

    for (double kg : new double[] {2.5, 2.5000000025}) {
      assertEquals("", note(diet(Horses.adult(500), hay(), bucket(kg, five)), "starch-day"));
    }
    assertEquals(
        "starch makes 2.4 g per kg of body weight a day; more than 2 g was tied to gastric ulcers",
        note(diet(Horses.adult(500), hay(), bucket(3, five)), "starch-day"));
    assertEquals(
        "starch makes at least 2.4 g per kg of body weight a day; more than 2 g was tied to gastric"
            + " ulcers",
        note(diet(Horses.adult(500), hay(), bucket(3, five), unknown), "starch-day"));
  }
}
