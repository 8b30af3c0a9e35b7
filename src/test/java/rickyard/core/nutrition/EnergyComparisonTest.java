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

class EnergyComparisonTest {
  @TempDir Path office;

  private static Foods fibres() {
    return Foods.of("lot-7", "grass-hay")
        .with(AnalyteCode.CP, 10, 0.5)
        .with(AnalyteCode.ADF, 38, 0.9)
        .with(AnalyteCode.NDF, 62, 1.2)
        .with(AnalyteCode.EE, 2.5, 0.2)
        .with(AnalyteCode.ASH, 8, 0.3);
  }

  private static Diet diet(Foodstuff hay, FeedingStandards standards) {
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, standards);
    return Diet.evaluate(horse, List.of(Portion.of(hay, 10, true)), needs, standards);
  }

  private static String note(Diet diet, String code) {
    return diet.notes().stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("none");
  }

  @Test
  void aPrintedValueFarOffIsSaidToBeMuchAndStaysInForce() {
    Foodstuff hay = fibres().with(AnalyteCode.DE, 2.4, 0).lot();
    assertEquals(2.4, hay.find(AnalyteCode.DE).orElseThrow().best());
    assertEquals(
        "lot-7: its report prints 2.40 Mcal of digestible energy per kg of dry matter, the equation"
            + " gives 2.06: a difference of 0.34, which is much; the report's is used",
        note(diet(hay, Foods.STANDARDS), "energy-differs"));
  }

  @Test
  void aPrintedValueNearByIsSaidToBeWithinWhatEquationsMissBy() {
    Foodstuff hay = fibres().with(AnalyteCode.DE, 2.1, 0).lot();
    String words = note(diet(hay, Foods.STANDARDS), "energy-compared");
    assertTrue(words.contains("a difference of 0.04, within what such equations miss by"), words);
  }

  @Test
  void typicalFatAndAshAreNamed() {
    Foodstuff hay =
        Foods.of("lot-7", "grass-hay")
            .with(AnalyteCode.CP, 10, 0.5)
            .with(AnalyteCode.ADF, 38, 0.9)
            .with(AnalyteCode.NDF, 62, 1.2)
            .with(AnalyteCode.DE, 2.1, 0)
            .lot();
    EnergyComparison found = EnergyComparison.of(hay, Foods.STANDARDS).orElseThrow();
    assertEquals(List.of("fat", "ash"), found.typical());
  }

  @Test
  void theOfficeMayPreferTheEquationAndSeesWhatItReplaces() throws IOException {
    Files.writeString(
        office.resolve("nutrition-settings.csv"),
        "name,value,unit,source,locator,status\n"
            + "de_preference,formula,report|formula,assumed,ours,assumed\n");
    FeedingStandards standards = NutritionTables.load(Optional.of(office)).standards();
    Foods made = fibres().with(AnalyteCode.DE, 2.4, 0);
    Foodstuff hay =
        new Foodstuffs(standards)
            .ofLot(Foods.lot("lot-7", "grass-hay"), made.analysis())
            .orElseThrow();

    assertEquals(2.0555, hay.find(AnalyteCode.DE).orElseThrow().best(), 0.00005);
    EnergyComparison found = EnergyComparison.of(hay, standards).orElseThrow();
    assertEquals(2.4, found.printed());
    assertEquals(0.3445, found.difference(), 0.00005);
    assertTrue(note(diet(hay, standards), "energy-differs").endsWith("the equation's is used"));
  }

  @Test
  void withoutAPrintedValueOrWithoutFibreThereIsNothingToCompare() {
    assertTrue(EnergyComparison.of(fibres().lot(), Foods.STANDARDS).isEmpty());
    Foodstuff printed = Foods.of("x", "grass-hay").with(AnalyteCode.DE, 2, 0).lot();
    assertTrue(EnergyComparison.of(printed, Foods.STANDARDS).isEmpty());
  }

  /** A feed's label is no forage report, and the equation is for forage. */
  @Test
  void aBucketFeedIsNotCompared() {
    Foodstuff feed =
        Foods.of("f", "concentrate")
            .with(AnalyteCode.CP, 12, 0)
            .with(AnalyteCode.ADF, 12, 0)
            .with(AnalyteCode.NDF, 30, 0)
            .with(AnalyteCode.EE, 4, 0)
            .with(AnalyteCode.ASH, 8, 0)
            .with(AnalyteCode.DE, 3.2, 0)
            .feed();
    assertTrue(EnergyComparison.of(feed, Foods.STANDARDS).isEmpty());
  }
}
