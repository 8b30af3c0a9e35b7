package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rickyard.core.forage.Reading;
import rickyard.core.quantity.Basis;
import rickyard.intake.grid.Grid;

/**
 * Units as printed, and a published table with a wrong line. Values are the sources', never ours.
 */
class PrintedUnitsReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/printed-units.csv", useHeadersInDisplayName = true)
  void aPrintedUnitBecomesTheCanonicalOne(
      String label, String printed, String unit, String code, double expected, double tolerance) {
    Grid grid =
        Grids.table(
            "Analyte|Unit|Dry matter\n" + label + "|" + unit + "|" + printed + "\nStarch|%|1.2");

    Reading reading = Readings.report(grid).samples().get(0).readings().get(0);

    assertEquals(code, reading.analyte().value());
    assertEquals(expected, reading.value().orElseThrow().best(), tolerance);
    assertEquals(Basis.DRY_MATTER, reading.value().orElseThrow().basis());
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/grams-read-as-grams.csv", useHeadersInDisplayName = true)
  void aPaperInGramsPerKilogramIsNotReadAsPercent(
      String label, String printed, double expected, String source) {
    Grid grid =
        Grids.table("Analyte|Unit|Dry matter\n" + label + "|g/kg|" + printed + "\nStarch|g/kg|12");

    Reading reading = Readings.report(grid).samples().get(0).readings().get(0);

    assertEquals(expected, reading.value().orElseThrow().best(), 1e-9, source);
    assertTrue(reading.isSettled(), source);
  }

  /** Source: vet-practice-feed-table, timothy row: moisture 10.00 and the sum agree. */
  @Test
  void theSoundRowOfThePracticeTableIsTaken() {
    assertEquals(
        "Timothy: MOISTURE=10 af, CP=8.6 af, EE=2.3 af, NDF=56.6 af, ASH=5.4 af",
        Readings.words(Grids.table(head() + "Timothy|10.00|8.60|2.30|56.60|5.40")));
  }

  /** Source: vet-practice-feed-table, alfalfa row: the moisture column holds a dry matter of 90. */
  @Test
  void dryMatterInTheMoistureColumnIsNotBelieved() {
    Reading moisture =
        Readings.report(Grids.table(head() + "Alfalfa|90.00|17.02|.40|42.90|7.80"))
            .samples()
            .get(0)
            .readings()
            .get(0);

    assertEquals("MOISTURE", moisture.analyte().value());
    assertTrue(!moisture.isSettled());
  }

  private static String head() {
    return "Results on an as fed basis\nFeed|Moisture %|CP %|Fat %|NDF %|Ash %\n";
  }
}
