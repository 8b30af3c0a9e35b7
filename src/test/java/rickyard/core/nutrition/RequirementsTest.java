package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

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
}
