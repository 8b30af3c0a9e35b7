package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RequirementsTest {
  private static Requirements needs(Horses horse) {
    return Requirements.of(horse.build(), Horses.DAY, Foods.STANDARDS);
  }

  private static double per(Horses horse, Nutrient nutrient) {
    return needs(horse).perDay(nutrient).orElseThrow();
  }

  private static void assertNone(Horses horse, String reason) {
    Requirements needs = needs(horse);
    for (Nutrient nutrient : Nutrient.values()) {
      assertTrue(needs.perDay(nutrient).isEmpty(), nutrient.code());
    }
    assertTrue(needs.get(Nutrient.DE).reason().contains(reason), needs.get(Nutrient.DE).reason());
  }

  @Test
  void aBlankMaintenanceLevelIsAverage() {
    assertEquals(16.65, per(Horses.adult(500), Nutrient.DE), 1e-9);
  }

  @Test
  void undefinedStatesHaveNoRequirementAndSayWhy() {
    assertNone(Horses.adult(500).status(HorseStatus.PREGNANT, Level.NONE).month(13), "12 months");
    assertNone(Horses.adult(500).status(HorseStatus.PREGNANT, Level.NONE), "month of pregnancy");
    assertNone(Horses.adult(500).status(HorseStatus.WORK, Level.NONE), "blank");
    assertNone(Horses.adult(500).status(HorseStatus.GROWING, Level.NONE).aged(12), "mature");
  }

  @Test
  void chlorideOfASevenMonthOldIsNotInventedBetweenTwoKnownAges() {
    Horses foal = Horses.adult(230).mature(500).status(HorseStatus.GROWING, Level.NONE).aged(8);
    Requirement chloride = needs(foal).get(Nutrient.CL);
    assertTrue(chloride.perDay().isEmpty());
    assertEquals(0.0825 * 230, chloride.bracket().orElseThrow().low(), 1e-9);
    assertEquals(0.093 * 230, chloride.bracket().orElseThrow().high(), 1e-9);
    assertTrue(needs(foal).perDay(Nutrient.CA).isPresent());
  }

  @Test
  void gestationGoesByMatureWeight() {
    Horses mare = Horses.adult(566).mature(500).status(HorseStatus.PREGNANT, Level.NONE).month(11);
    assertEquals(21.4, per(mare, Nutrient.DE), 1e-9);
  }

  /** Wood et al. 2006: 0.75 of horse energy needs on a body weight basis. */
  @Test
  void donkeysHaveTheirOwnEnergyFactor() {
    Horses donkey = Horses.adult(180).type(HorseType.DONKEY);
    assertEquals(0.75 * 0.0333 * 180, per(donkey, Nutrient.DE), 1e-9);
    assertEquals(per(Horses.adult(180), Nutrient.CP), per(donkey, Nutrient.CP), 1e-9);
  }

  @Test
  void breedingStallionsTakeTheMineralsOfLightWork() {
    Horses stallion = Horses.adult(500).status(HorseStatus.STALLION, Level.BREEDING);
    Horses work = Horses.adult(500).status(HorseStatus.WORK, Level.LIGHT);
    for (Nutrient n :
        new Nutrient[] {
          Nutrient.CA, Nutrient.P, Nutrient.MG, Nutrient.K, Nutrient.NA, Nutrient.CL
        }) {
      assertEquals(per(work, n), per(stallion, n), 1e-9, n.code());
    }
  }

  @Test
  void everyRequirementSaysItsRowsAndItsStanding() {
    Requirement copper = needs(Horses.adult(500)).get(Nutrient.CU);
    assertEquals(1, copper.parts().size());
    assertEquals("requirements-2007/trace-elements.csv 2", copper.parts().get(0).source().table());
    assertEquals(Standing.SECONDARY, copper.standing());
    assertEquals(Standing.MEMORY, needs(Horses.adult(500)).get(Nutrient.S).standing());
  }

  /** Measured maintenance of stabled geldings, J Anim Sci 1983: 16.95 ± 0.35 Mcal at 503 kg. */
  @Test
  void averageMaintenanceAgreesWithAFeedingTrial() {
    assertEquals(16.95, per(Horses.adult(503), Nutrient.DE), 0.35);
  }

  @Test
  void lysineFollowsProteinButNotThatOfMilk() {
    Horses mare = Horses.adult(500).status(HorseStatus.LACTATING, Level.NONE).month(1);
    // horse magazine citing the book's pp. 298-299: 84.8 g, not 4.3 % of 1535 g
    assertEquals(84.8, per(mare, Nutrient.LYS), 0.06);
  }

  private static Horses growing(double kg, int months, Level level) {
    return Horses.adult(kg).mature(500).status(HorseStatus.GROWING, level).aged(months);
  }

  /** Recalled table of 500 kg mature weight: 12 and 18 months, the latter at rest and in work. */
  @ParameterizedTest
  @CsvSource({
    "321, 12, NONE, DE, 18.8, 0.05",
    "321, 12, NONE, CP, 846, 0.7",
    "321, 12, NONE, LYS, 36.4, 0.05",
    "387, 18, NONE, DE, 19.2, 0.05",
    "387, 18, LIGHT, DE, 22.1, 0.05",
    "387, 18, MODERATE, DE, 25.0, 0.05"
  })
  void youngHorsesNeedForMaintenanceGainAndTraining(
      double kg, int months, Level level, Nutrient nutrient, double need, double tolerance) {
    assertEquals(need, per(growing(kg, months, level), nutrient), tolerance);
  }

  /** A table by work level at 550 kg prints 22.0, 25.6, 29.3 and 37.9 Mcal. */
  @ParameterizedTest
  @CsvSource({"LIGHT, 22.0", "MODERATE, 25.6", "HEAVY, 29.3", "VERY_HEAVY, 37.9"})
  void workMultipliesTheEnergyOfMaintenance(Level level, double need) {
    assertEquals(need, per(Horses.adult(550).status(HorseStatus.WORK, level), Nutrient.DE), 0.06);
  }

  /** A mailing list of 2008 gives 583 and 714 g of protein for 400 kg in months 7 and 11. */
  @ParameterizedTest
  @CsvSource({"7, 583", "11, 714"})
  void proteinOfPregnancyFollowsTheGrowthOfTheFoal(int month, double need) {
    Horses mare = Horses.adult(400).mature(400).status(HorseStatus.PREGNANT, Level.NONE);
    assertEquals(need, per(mare.month(month), Nutrient.CP), 0.6);
  }

  /** Derivative of 0.097 x 500 x 1e-9 X^3.5512 at X = 30.4 x 11 days, by differences. */
  @Test
  void theFoalGainsWhatItsCurveSays() {
    Horse mare =
        Horses.adult(566).mature(500).status(HorseStatus.PREGNANT, Level.NONE).month(11).build();
    LifeStage stage = LifeStage.of(mare, Horses.DAY);
    Drivers drivers = new Drivers(mare, stage, 11, Foods.STANDARDS.requirements());
    double day = 30.4 * 11;
    double gain = fetusKg(day + 0.5) - fetusKg(day - 0.5);
    assertEquals(gain, drivers.value(Driver.FETAL_GAIN), 1e-5);
  }

  private static double fetusKg(double day) {
    return 0.097 * 500 * 1e-9 * Math.pow(day, 3.5512);
  }

  /** Sulphur is 1.5 g per kg of the dry matter assumed: 2 % of mature weight, 2.5 % in milk. */
  @Test
  void theDryMatterThatTheTablesAssumeGoesByMatureWeightInPregnancyOnly() {
    Horses heavy = Horses.adult(566).mature(500);
    assertEquals(
        15, per(heavy.status(HorseStatus.PREGNANT, Level.NONE).month(11), Nutrient.S), 1e-9);
    assertEquals(
        1.5 * 0.025 * 566,
        per(heavy.status(HorseStatus.LACTATING, Level.NONE).month(1), Nutrient.S),
        1e-9);
  }

  /** Recalled table of 500 kg mature weight: 168 kg at 4, 321 at 12, 429 at 24 months. */
  @ParameterizedTest
  @CsvSource({"4, 168", "12, 321", "24, 429"})
  void aYoungHorseWeighsWhatTheCurveSays(int months, double kg) {
    assertEquals(kg, Growth.weightKg(500, months, Foods.STANDARDS.requirements()), 0.5);
  }

  private static String stage(Horses horse) {
    return LifeStage.of(horse.build(), Horses.DAY).words();
  }

  @Test
  void aStageOfLifeIsSaidInWords() {
    assertEquals("maintenance, average", stage(Horses.adult(500)));
    assertEquals(
        "gestation, month 9",
        stage(Horses.adult(500).status(HorseStatus.PREGNANT, Level.NONE).month(9)));
    assertEquals("growth, untrained, age in months 12", stage(growing(321, 12, Level.NONE)));
    assertEquals("growth, untrained, age in months 12", stage(growing(321, 12, Level.AVERAGE)));
    assertEquals("growth, light, age in months 18", stage(growing(387, 18, Level.LIGHT)));
    assertEquals(
        "stallion, breeding",
        stage(Horses.adult(500).status(HorseStatus.STALLION, Level.BREEDING)));
    assertEquals(
        "stallion, non-breeding",
        stage(Horses.adult(500).status(HorseStatus.STALLION, Level.NON_BREEDING)));
  }

  @Test
  void aLevelOfAnotherStatusIsNoStage() {
    assertNone(growing(321, 12, Level.LOW), "\"low\" does not belong to growth");
    assertNone(
        Horses.adult(500).status(HorseStatus.STALLION, Level.LIGHT),
        "\"light\" does not belong to stallion");
    assertNone(
        Horses.adult(500).status(HorseStatus.MAINTENANCE, Level.HEAVY),
        "\"heavy\" does not belong to maintenance");
  }
}
