package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;

/** What holds where the printed tables end: ages, months and sizes. */
class BeyondTheTablesTest {
  private static final RequirementTables TABLES = Foods.STANDARDS.requirements();

  private static Requirements needs(Horses horse) {
    return Requirements.of(horse.build(), Horses.DAY, Foods.STANDARDS);
  }

  private static Horses young(int months, Level training) {
    double kg = Growth.weightKg(500, months, TABLES);
    return Horses.adult(kg).mature(500).status(HorseStatus.GROWING, training).aged(months);
  }

  private static Horses mare(HorseStatus status, int month) {
    return Horses.adult(500).mature(500).status(status, Level.NONE).month(month);
  }

  private static List<String> codes(Horses horse, double hayKg) {
    return diet(horse, hayKg).notes().stream().map(DietNote::code).toList();
  }

  private static Diet diet(Horses made, double hayKg) {
    Horse horse = made.build();
    Foodstuff hay =
        Foods.of("hay", "grass-hay")
            .with(AnalyteCode.CP, 12, 0)
            .with(AnalyteCode.DE, 2, 0)
            .with(AnalyteCode.SE, 3, 0)
            .lot();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(Portion.of(hay, hayKg, true)), needs, Foods.STANDARDS);
  }

  @Test
  void aFoalAtItsDamHasNoRequirementAndTheWordsSayWhy() {
    for (int months = 0; months < 4; months++) {
      Requirement energy = needs(young(months, Level.NONE)).get(Nutrient.DE);
      assertTrue(energy.perDay().isEmpty() && energy.bracket().isEmpty());
      assertTrue(energy.reason().contains("lives on its dam's milk"), energy.reason());
    }
    assertTrue(codes(young(2, Level.NONE), 1).contains("no-requirement"));
  }

  @Test
  void everyMonthFromFourToSixtyHasEveryNutrientButTheChlorideThatNobodyPrinted() {
    for (Level training : List.of(Level.NONE, Level.LIGHT, Level.VERY_HEAVY)) {
      for (int months = 4; months <= 60; months++) {
        int age = months;
        needs(young(months, training))
            .byNutrient()
            .forEach(
                (nutrient, need) -> {
                  boolean isOpen = nutrient == Nutrient.CL && age > 6 && age < 12;
                  assertEquals(isOpen, need.perDay().isEmpty(), nutrient + " at " + age);
                  assertEquals(isOpen, need.bracket().isPresent(), nutrient + " at " + age);
                });
      }
    }
  }

  /** The equations carried on come to those of a grown horse: no step of energy above 3 %. */
  @Test
  void energyGoesOnWithoutAStepFromTheTablesToAGrownHorse() {
    double before = needs(young(23, Level.NONE)).perDay(Nutrient.DE).orElseThrow();
    for (int months = 24; months <= 50; months++) {
      double now = needs(young(months, Level.NONE)).perDay(Nutrient.DE).orElseThrow();
      assertEquals(1, now / before, 0.03, "at " + months);
      before = now;
    }
    double grown = needs(young(48, Level.NONE)).perDay(Nutrient.DE).orElseThrow();
    assertEquals(0.0333 * Growth.weightKg(500, 48, TABLES), grown, 1e-9);
  }

  @Test
  void whatIsCarriedOnSaysSoAndCountsAsAssumed() {
    Requirement energy = needs(young(30, Level.NONE)).get(Nutrient.DE);
    assertEquals(Standing.ASSUMED, energy.standing());
    assertTrue(energy.caveat().contains("the tables end at 24 months"), energy.caveat());
    assertTrue(codes(young(30, Level.NONE), 8).contains("beyond-tables"));
    assertFalse(codes(young(24, Level.NONE), 8).contains("beyond-tables"));
    // the horse's own age, not that of 24 months
    double gain = Growth.dailyGainKg(500, 30, TABLES);
    double own =
        56.5 * Math.pow(30, -0.145) * Growth.weightKg(500, 30, TABLES) / 1000
            + (1.99 + 1.21 * 30 - 0.021 * 900) * gain;
    assertEquals(own, energy.perDay().orElseThrow(), 1e-9);
  }

  @Test
  void aMareOverHerTimeKeepsTheNeedOfMonthEleven() {
    for (Nutrient nutrient : List.of(Nutrient.DE, Nutrient.CP, Nutrient.LYS, Nutrient.CU)) {
      assertEquals(
          needs(mare(HorseStatus.PREGNANT, 11)).perDay(nutrient),
          needs(mare(HorseStatus.PREGNANT, 12)).perDay(nutrient));
    }
  }

  @Test
  void lateLactationIsEnclosedByElevatedMaintenanceAndMonthSix() {
    Requirements dry = needs(Horses.adult(500).status(HorseStatus.MAINTENANCE, Level.ELEVATED));
    Requirements six = needs(mare(HorseStatus.LACTATING, 6));
    needs(mare(HorseStatus.LACTATING, 8))
        .byNutrient()
        .forEach(
            (nutrient, need) -> {
              Requirement.Bracket ends = need.bracket().orElseThrow();
              assertEquals(dry.perDay(nutrient).orElseThrow(), ends.low(), nutrient.code());
              assertEquals(six.perDay(nutrient).orElseThrow(), ends.high(), nutrient.code());
              assertTrue(need.perDay().isEmpty());
              assertEquals(ends.low(), need.atLeast().orElseThrow());
            });
  }

  @Test
  void aSupplyIsShortBelowTheLowerEndEnoughAboveTheUpperAndOpenBetween() {
    // protein: 720 g at elevated maintenance, 1265 g in month 6; the hay has 108 g per kg as fed
    assertEquals(NutrientStatus.BELOW, protein(6));
    assertEquals(NutrientStatus.NO_REQUIREMENT, protein(9));
    assertEquals(NutrientStatus.MEETS, protein(12));
    assertTrue(codes(mare(HorseStatus.LACTATING, 8), 9).contains("needs-enclosed"));
  }

  private static NutrientStatus protein(double hayKg) {
    return diet(mare(HorseStatus.LACTATING, 8), hayKg).line(Nutrient.CP).status();
  }

  /** From a 90-kg miniature to a 900-kg draught horse a need per kg is one and the same. */
  @Test
  void needsPerKgAreTheSameAtEverySize() {
    for (HorseStatus status : HorseStatus.values()) {
      Requirements least = needs(of(status, 90));
      for (double kg : List.of(200.0, 550.0, 900.0)) {
        Requirements found = needs(of(status, kg));
        least
            .byNutrient()
            .forEach(
                (nutrient, need) ->
                    assertEquals(
                        need.perDay().orElseThrow() / 90,
                        found.perDay(nutrient).orElseThrow() / kg,
                        1e-9 * found.perDay(nutrient).orElseThrow(),
                        status + " " + nutrient));
      }
    }
  }

  private static Horses of(HorseStatus status, double kg) {
    Horses made = Horses.adult(kg).mature(kg).month(6);
    return switch (status) {
      case WORK -> made.status(status, Level.HEAVY);
      case STALLION -> made.status(status, Level.BREEDING);
      case GROWING ->
          Horses.adult(Growth.weightKg(kg, 18, TABLES))
              .mature(kg)
              .status(status, Level.MODERATE)
              .aged(18);
      default -> made.status(status, Level.NONE);
    };
  }

  @Test
  void sizesThatTheTablesDoNotPrintAreSaid() {
    assertTrue(codes(Horses.adult(90), 2).contains("size-outside-tables"));
    assertFalse(codes(Horses.adult(200), 4).contains("size-outside-tables"));
    assertFalse(codes(Horses.adult(900), 18).contains("size-outside-tables"));
    assertTrue(codes(Horses.adult(950), 18).contains("size-outside-tables"));
  }

  @Test
  void aMareOfUnknownMatureWeightAndAYearlingOffItsCurveAreSaid() {
    Horses mare = Horses.adult(560).status(HorseStatus.PREGNANT, Level.NONE).month(11);
    assertTrue(codes(mare, 10).contains("mature-weight-unknown"));
    assertFalse(codes(mare(HorseStatus.PREGNANT, 11), 10).contains("mature-weight-unknown"));
    Horses heavy = Horses.adult(450).mature(500).status(HorseStatus.GROWING, Level.NONE).aged(12);
    assertTrue(codes(heavy, 8).contains("growth-off-curve"));
    assertFalse(codes(young(12, Level.NONE), 8).contains("growth-off-curve"));
  }
}
