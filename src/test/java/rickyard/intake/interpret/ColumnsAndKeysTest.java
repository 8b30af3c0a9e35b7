package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Report;
import rickyard.core.forage.ReportStatus;
import rickyard.core.forage.Sample;
import rickyard.intake.grid.Grid;

/** Columns that are told apart by names, signs, seasons and notes elsewhere on the page. */
class ColumnsAndKeysTest {

  @Test
  void wordsUnderTheNamesOfSamplesDescribeThem() {
    Grid grid =
        Grids.pages(
            """
            All results on dry matter

                             Unit     WQ/71          WQ/72          Normal range
                                      Mill field     Fen side

            Crude protein    %        9.1            11.4           8-14
            ADF              %        33.0           36.5           30-40
            """);

    assertEquals("WQ/71: CP=9.1 dm, ADF=33 dm\nWQ/72: CP=11.4 dm, ADF=36.5 dm", words(grid));
    assertEquals("Mill field", Readings.report(grid).samples().get(0).material());
  }

  @Test
  void numbersLikeRangesNameSamplesOnlyInAHeadingOfATable() {
    assertEquals(
        "31-4410: CP=9.1 dm\n31-4411: CP=11.4 dm",
        words(
            Grids.table(
                """
                Parameter|Unit|31-4410|31-4411|Last year (2025)
                Crude protein|% DM|9.1|11.4|10.0
                """)));
  }

  @Test
  void aColumnOfLastSeasonIsNoResultAndThisLotIsNoName() {
    assertEquals(
        "PK-8: CP=9.1 dm, ADF=33 dm",
        words(
            Grids.table(
                """
                Lot|PK-8
                All results on a dry matter basis
                Test|Units|This season|Last season|Usual range
                Crude protein|%|9.1|10.2|7-13
                ADF|%|33.0|34.1|30-40
                """)));
  }

  @Test
  void aKeyElsewhereTellsWhatSignsOverColumnsStandFor() {
    String table =
        """
        Lot|PK-9
        Test|Unit|R1|R2
        Dry matter|%|88.0|100
        Crude protein|%|8.8|10.0
        """;

    assertEquals(
        "PK-9: DM=88 af, CP=10 dm",
        words(Grids.table(table + "Key|R1 = as received|R2 = moisture free\n")));
  }

  @Test
  void halfAKeyOrTwoKeysForOneSignTellNothing() {
    String table =
        """
        Lot|PK-9
        Test|Unit|R1|R2
        Crude protein|%|8.8|10.0
        """;

    for (String key : List.of("", "R2 = moisture free", "R2 = dry matter|R2 = as received")) {
      assertFalse(words(Grids.table(table + key + "\n")).contains("CP="), key);
    }
  }

  @Test
  void aHeadingAboveABracketBelongsToIt() {
    assertEquals(
        "PK-10: CP=10 dm",
        words(
            Grids.pages(
                """
                Lot: PK-10

                                                             Target values
                Test             Unit   As fed   Dry matter  (in DM)
                Crude protein    %      8.8      10.0        9.0
                """)));
  }

  @Test
  void fieldsAboveAWideTableNameItsRows() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Lot|Received|Status|Fibre|
                |||ADF|NDF
                |||% DM|% DM
                RT-1|3 May 2026|final|33.0|60.0
                RT-2|3 May 2026|preliminary|34.0|61.0
                RT-3|3 May 2026|amended|35.0|62.0
                """));

    assertEquals("RT-1 RT-2 RT-3", names(report));
    assertEquals(ReportStatus.FINAL, report.status());
    assertEquals(
        List.of(
            Optional.empty(),
            Optional.of(ReportStatus.PRELIMINARY),
            Optional.of(ReportStatus.AMENDED)),
        report.samples().stream().map(Sample::standing).toList());
  }

  @Test
  void aStandingThatAllRowsShareOrThatTakesBackIsTheReports() {
    String rows =
        """
        Lot|Test|Result|Unit|Basis|Status
        RT-1|ADF|33.0|%|dry matter|preliminary
        RT-2|ADF|34.0|%|dry matter|other
        """;

    assertEquals(
        ReportStatus.PRELIMINARY,
        Readings.report(Grids.table(rows.replace("other", "preliminary"))).status());
    assertEquals(
        ReportStatus.WITHDRAWN,
        Readings.report(Grids.table(rows.replace("other", "withdrawn"))).status());
  }

  @Test
  void aPreliminaryPageIsNotMadeFinalByARow() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Preliminary report
                Lot|Test|Result|Unit|Basis|Status
                RT-1|ADF|33.0|%|dry matter|final
                """));

    assertEquals(ReportStatus.PRELIMINARY, report.status());
    assertEquals(Optional.empty(), report.samples().get(0).standing());
  }

  @Test
  void aSentenceThatCallsTheFiguresPreliminaryCounts() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Dear Mr Oake, here at last are the preliminary results for the two loads that you left with us on the third of May.
                Lot|PK-11
                Test|Result
                ADF (% DM)|33.0
                """));

    assertEquals(ReportStatus.PRELIMINARY, report.status());
  }

  @Test
  void unitsOfGroupsAreToldInASentence() {
    String table =
        """
        Lot|PK-12
        Test|Dry matter basis
        Calcium|0.45
        Iron|120
        """;

    assertEquals(
        "PK-12: CA=0.45 dm, FE=120 dm",
        words(Grids.table(table + "Trace elements in mg/kg, the rest in %.\n")));
    assertTrue(words(Grids.table(table + "Trace elements in mg/kg.\n")).contains("unit-not"));
  }

  @Test
  void everyOtherColumnIsSpokenOfBesideTheWater() {
    assertEquals(
        "RT-4: MOISTURE=11 af, ADF=33 dm",
        words(
            Grids.table(
                """
                Lot|Moisture, %|ADF, %
                RT-4|11.0|33.0
                Moisture: as received. Every other column: dry matter basis.
                """)));
  }

  @Test
  void theRestIsNotWhatWasSpokenOfBefore() {
    String table =
        """
        Lot|Crude protein, %|ADF, %
        RT-5|9.9|33.0
        """;

    for (String note :
        List.of(
            "Crude protein: as received. Every other column: dry matter basis.",
            "Crude protein: as received\nEvery other column: dry matter basis.")) {
      assertEquals("RT-5: CP?basis-not-stated, ADF=33 dm", words(Grids.table(table + note)), note);
    }
  }

  @Test
  void aSampleIsPreliminaryIfAnyOfItsRowsIs() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Lot|Test|Result|Unit|Basis|Status
                RT-6|ADF|33.0|%|dry matter|final
                RT-6|NDF|60.0|%|dry matter|preliminary
                RT-7|ADF|34.0|%|dry matter|final
                """));

    assertEquals(
        List.of(Optional.of(ReportStatus.PRELIMINARY), Optional.empty()),
        report.samples().stream().map(Sample::standing).toList());
  }

  @Test
  void aNameWithItsUnitBeginsTheSecondHalfOfARow() {
    assertEquals(
        "SV-22: ADF=33 dm, DE=1.98416 dm, CP=10 dm, CA=0.4 dm",
        words(
            Grids.pages(
                """
                Lot: SV-22
                All results on dry matter

                ADF, %       33.0     DE, horse, Mcal/lb    0.90
                CP, %        10.0     Calcium, %            0.40
                """)));
  }

  @Test
  void aNumberAndAMarkOnOneLineAreOneSample() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Sample: SV-21|Your mark: upper barn
                Test|Result (% DM)
                ADF|33.0
                """));

    assertEquals("SV-21", names(report));
    assertEquals("upper barn", report.samples().get(0).material());
  }

  private static String names(Report report) {
    return String.join(" ", report.samples().stream().map(Sample::label).toList());
  }

  private static String words(Grid grid) {
    return Readings.words(grid);
  }
}
