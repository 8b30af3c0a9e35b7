package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.AnalyteCode;
import rickyard.tables.NutritionTables;

/** Where sources conflict both are kept, one is in force, and the page that uses it says so. */
class OtherSourcesTest {
  @TempDir Path office;

  private static Requirement need(Horses horse, Nutrient nutrient) {
    return Requirements.of(horse.build(), Horses.DAY, Foods.STANDARDS).get(nutrient);
  }

  private static Horses veryHeavy() {
    return Horses.adult(550).status(HorseStatus.WORK, Level.VERY_HEAVY);
  }

  private static Horses milking(int month) {
    return Horses.adult(500).status(HorseStatus.LACTATING, Level.NONE).month(month);
  }

  private static List<String> said(Horses made, double selenium, FeedingStandards standards) {
    Horse horse = made.build();
    Foodstuff hay =
        Foods.of("hay", "grass-hay")
            .dm(100)
            .with(AnalyteCode.SE, selenium, 0)
            .with(AnalyteCode.CA, 1.1, 0)
            .with(AnalyteCode.P, 0.2, 0)
            .lot();
    Requirements needs = Requirements.of(horse, Horses.DAY, standards);
    return Diet.evaluate(horse, List.of(Portion.of(hay, 10, true)), needs, standards)
        .notes()
        .stream()
        .filter(n -> n.code().equals("sources-differ"))
        .map(DietNote::words)
        .toList();
  }

  /** 1105 g is printed at 550 kg (s29); the quoted text would make it 1204. */
  @Test
  void proteinOfVeryHeavyWorkHasBoth() {
    Requirement protein = need(veryHeavy(), Nutrient.CP);
    assertEquals(1105, protein.perDay().orElseThrow(), 0.5);
    assertEquals(1, protein.others().size());
    assertEquals(1204, protein.others().get(0).perDay(), 0.5);
    assertEquals("s7", protein.others().get(0).value().source().key());
  }

  /** 9.0, 8.9, 8.7 g with the halved coefficient, 10.6, 10.2, 10.0 with the early one. */
  @Test
  void magnesiumOfLateLactationHasBoth() {
    double[] used = {9.0, 8.9, 8.7};
    double[] other = {10.6, 10.2, 10.0};
    for (int month = 4; month <= 6; month++) {
      Requirement magnesium = need(milking(month), Nutrient.MG);
      assertEquals(used[month - 4], magnesium.perDay().orElseThrow(), 0.05);
      assertEquals(other[month - 4], magnesium.others().get(0).perDay(), 0.06);
    }
    assertTrue(need(milking(3), Nutrient.MG).others().isEmpty());
  }

  @Test
  void iodineOfLactationHasBoth() {
    Requirement iodine = need(milking(1), Nutrient.I);
    assertEquals(0.35 * 12.5, iodine.perDay().orElseThrow(), 1e-9);
    assertEquals(0.4 * 12.5, iodine.others().get(0).perDay(), 1e-9);
  }

  /** Refuted values are on record and never said. */
  @Test
  void whatIsRefutedIsKeptAndNotSaid() {
    assertTrue(need(milking(1), Nutrient.CA).others().isEmpty());
    assertEquals(
        1, need(milking(1), Nutrient.CA).parts().stream().mapToInt(p -> p.others().size()).sum());
  }

  @Test
  void thePageOfTheHorseNamesBoth() {
    assertTrue(
        said(veryHeavy(), 0.2, Foods.STANDARDS)
            .contains(
                "sources differ on the need of CP: 1105 g a day is used, another has 1204 (a text"
                    + " quotes body weight x 1.44 + body weight x 0.354; s7, secondary)"));
  }

  @Test
  void anOfficeThatTakesTheOtherReadsOfTheFirst() throws IOException {
    Path folder = Files.createDirectories(office.resolve("requirements-2007"));
    Files.writeString(
        folder.resolve("energy-protein.csv"),
        "life,level,from_month,to_month,nutrient,driver,coefficient,source,locator,status\n"
            + "work,very-heavy,,,CP,bw,1.44,s7,as the text is quoted,secondary\n");
    FeedingStandards standards = NutritionTables.load(Optional.of(office)).standards();
    List<String> said = said(veryHeavy(), 0.2, standards);
    assertTrue(
        said.get(0)
            .startsWith(
                "sources differ on the need of CP: 1204 g a day is used, another has 1105 (a"
                    + " table by work level"),
        said::toString);
  }

  /** A ceiling is disputed only for a diet that comes to the lowest of those named. */
  @Test
  void theCeilingOfSeleniumIsDisputedOnlyWhereItMatters() {
    assertEquals(
        0,
        said(Horses.adult(500), 1.9, Foods.STANDARDS).stream()
            .filter(w -> w.contains("SE"))
            .count());
    List<String> above =
        said(Horses.adult(500), 3, Foods.STANDARDS).stream().filter(w -> w.contains("SE")).toList();
    assertEquals(
        List.of(
            "sources differ on the most tolerated of SE: 20.00 mg a day is used, another has 50.00"
                + " (Mineral Tolerance of Animals 2005; seen printed for cattle only;"
                + " nrc2005-recalled, memory)"),
        above);
  }

  @Test
  void theRatioAboveFiveIsDisputed() {
    assertTrue(
        said(Horses.adult(500), 0.2, Foods.STANDARDS).stream()
            .anyMatch(w -> w.startsWith("sources differ on the most tolerated of CA_P: 5.00")));
  }

  private static List<String> selenium(double kg, double eats, double perKg) {
    Horse horse = Horses.adult(kg).build();
    Foodstuff hay = Foods.of("hay", "grass-hay").dm(100).with(AnalyteCode.SE, perKg, 0).lot();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, List.of(Portion.of(hay, eats, true)), needs, Foods.STANDARDS)
        .notes()
        .stream()
        .map(DietNote::words)
        .filter(w -> w.startsWith("sources differ on the most tolerated of SE"))
        .toList();
  }

  /** 2 mg per kg in 10 kg is what is tolerated. */
  @Test
  void asMuchAsTheLowestCeilingIsNotDisputed() {
    assertEquals(List.of(), selenium(500, 10, 2));
    assertEquals(1, selenium(500, 10, 2.01).size());
  }

  /** 2 and 5 mg per kg of 20 kg, and of a team's 200 kg. */
  @Test
  void largerFiguresHaveFewerDecimals() {
    assertTrue(
        selenium(1000, 20, 3).get(0).contains(": 40.00 mg a day is used, another has 100.0 ("),
        selenium(1000, 20, 3)::toString);
    assertTrue(
        selenium(1000, 200, 3).get(0).contains(": 400.0 mg a day is used, another has 1000 ("),
        selenium(1000, 200, 3)::toString);
  }

  /** 10 kg of 1.0 and 0.2 % are 100 to 20 g. */
  @Test
  void aRatioOfFiveIsNotDisputed() {
    Horse horse = Horses.adult(500).build();
    Foodstuff hay =
        Foods.of("hay", "grass-hay")
            .dm(100)
            .with(AnalyteCode.CA, 1, 0)
            .with(AnalyteCode.P, 0.2, 0)
            .lot();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    assertTrue(
        Diet.evaluate(horse, List.of(Portion.of(hay, 10, true)), needs, Foods.STANDARDS)
            .notes()
            .stream()
            .noneMatch(n -> n.words().contains("most tolerated of CA_P")));
  }
}
