package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rickyard.core.forage.Report;
import rickyard.core.forage.ReportStatus;

/**
 * Layouts invented for these tests, each with what a person reads from it written first. The
 * figures are invented; they lie inside the usual ranges of config/analytes.csv.
 */
class UnseenLayoutTest {

  @Test
  void aSentenceWithOtherWordsGivesTheBasis() {
    String truth = "K1: DM=88 af, CP=10.2 dm, WSC=9.4 dm, STARCH=1.1 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Upland Forage Desk
                Lot | K1
                "Please note: all laboratory results for this customer are on a dry matter basis, unless the row says otherwise. Thank you!"
                Test | % found
                Dry matter, as received | 88.0
                Protein | 10.2
                WSC | 9.4
                Starch | 1.1
                """)));
  }

  @Test
  void aDisclaimerAboutTheSampleIsNoBasis() {
    String truth = "K2: DM=88 af, CP?basis-not-stated, WSC?basis-not-stated";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Lot | K2
                Results relate only to the sample as received.
                Test | Unit | Result
                Dry matter | % | 88.0
                Protein | % | 10.2
                WSC | % | 9.4
                """)));
  }

  @Test
  void aSentenceAboutUsualRangesOrConversionIsNoBasis() {
    String truth = "K3: DM=88 af, CP?basis-not-stated";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Lot | K3
                Typical values are on a dry matter basis. To convert results to a dry matter basis divide by DM.
                Test | Unit | Result
                Dry matter | % | 88.0
                Protein | % | 10.2
                """)));
  }

  @Test
  void namesOverValuesInTheHeadAndRangesBesideResults() {
    String truth =
        "NB-4: DM=87.5 af, MOISTURE=12.5 af, CP=11.1 dm, ADF=35 dm, NDF=57.2 dm, WSC=8.3 dm,"
            + " ESC=5.6 dm, K=1.9 dm, FE=140 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                  HOLLOW HILL FEED ROOM

                  Stack          Kind          Our ref       Taken on       Cores
                  NB-4           grass hay     A-901         3 March 2026   14

                  Determination                  As sampled      DM basis       Normal
                                                                              (first cut)
                  Dry matter, %                       87.5                    84 - 92
                  Moisture, %                         12.5
                  Protein, crude, %                    9.7          11.1      7 - 14
                  Fibre, acid detergent, %            30.6          35.0      32 - 42
                  Fibre, neutral detergent, %         50.1          57.2      54 - 68
                  Sugars, water-soluble (WSC), %       7.3           8.3
                     of which ethanol-soluble, %       4.9           5.6
                  Potassium, %                        1.66          1.90      1.2 - 2.6
                  Iron, ppm                            123           140
                """)));
  }

  @Test
  void aListOfSamplesStandsAboveAWideTable() {
    String truth =
        "FLD-1: DM=88.1 af, CP=9.9 dm, WSC=10.1 dm\nFLD-2: DM=87.3 af, CP=12 dm, WSC=7.7 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Tarn Bench
                Lab no | Lot | Material
                77-1 | FLD-1 | grass hay
                77-2 | FLD-2 | mixed hay

                Figures are expressed on dry matter, except dry matter itself.
                Lab no | Dry matter % | CP % | WSC %
                77-1 | 88.1 | 9.9 | 10.1
                77-2 | 87.3 | 12.0 | 7.7
                """)));
  }

  @Test
  void aTableGoesOnOverleafWithoutItsHeader() {
    String truth = "PL-3: DM=88 af, CP=10 dm, WSC=9 dm, CA=0.5 dm, ZN=25 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                Lot: PL-3
                Item             Unit     Fresh       Dry
                Dry matter       %         88.0
                Crude protein    %          8.8     10.0
                WSC              %          7.9      9.0
                                              turn over
                """,
                """
                Result sheet, second leaf
                Calcium          %         0.44     0.50
                Zinc             mg/kg       22       25
                """)));
  }

  @Test
  void lettersInAColumnStandForMethods() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Lot | MT-1
                Key: D = by NIR, E = wet chemistry
                Test | Unit | On dry matter | Technique
                CP | % | 10.1 | D
                WSC | % | 8.2 | E
                """));
    assertEquals(
        "NIR WET",
        report.samples().get(0).readings().stream()
            .map(r -> r.method().toString())
            .reduce((a, b) -> a + " " + b)
            .orElse(""));
  }

  @Test
  void icpDoesNotSpeakForSugars() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Lot | MT-2
                Method: ICP for minerals
                Test | Unit | On dry matter
                WSC | % | 8.2
                Calcium | % | 0.5
                """));
    assertEquals(
        "UNKNOWN WET",
        report.samples().get(0).readings().stream()
            .map(r -> r.method().toString())
            .reduce((a, b) -> a + " " + b)
            .orElse(""));
  }

  @Test
  void aWithdrawalWithoutFiguresIsAReport() {
    Report report =
        Readings.report(
            Grids.pages(
                """
                Sloe Lane Laboratory
                Certificate no: SL-88
                Lot: QV-9
                REPORT WITHDRAWN
                The oven had failed. Please discard the sheet.
                """));
    assertEquals(ReportStatus.WITHDRAWN, report.status());
    assertEquals("SL-88", report.reportNo());
    assertEquals("QV-9", report.samples().get(0).label());
    assertEquals(0, report.samples().get(0).readings().size());
  }

  @Test
  void anAmendedReportWithoutANumberIsRevisionOne() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Report no | AB-1
                Report status | Amended
                Lot | X-1
                Analyte | Unit | Dry matter
                WSC | % | 9.1
                """));
    assertEquals(ReportStatus.AMENDED, report.status());
    assertEquals(1, report.revision());
  }

  @Test
  void aBannerWithCommonWordsDoesNotCloseTheTable() {
    String truth = "BN-1: CP=9.9 dm, WSC=8.1 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                INTERIM SHEET - trace minerals to come
                Lot: BN-1
                Parameter        Units      Dry matter
                Crude protein    %                 9.9
                WSC              %                 8.1
                """)));
  }

  @Test
  void valuesRightUnderTheNextHeadingKeepTheirColumn() {
    String truth = "AL-1: DM=88 af, CP=10 dm, WSC=9 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                Lot: AL-1
                Test            As fed        In the dry matter   How
                DM %              88.0                            NIR
                CP %               8.8                     10.0   NIR
                WSC %              7.9                      9.0   NIR
                """)));
  }

  @Test
  void oneLineForEachFigureWithBasisInTheLine() {
    String truth = "RC-7: DM=87 af, CP=10.4 dm, WSC=8.8 dm, NO3_N=410 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                lot: RC-7
                dry matter = 87.0 %
                crude protein = 10.4 % DM
                WSC = 8.8 % of dry matter
                nitrate as NO3-N = 410 mg/kg DM
                """)));
  }

  @Test
  void twoSamplesSideBySideEachWithBothBases() {
    String truth = "S-1: CP=9 dm, WSC=8 dm\nS-2: CP=11 dm, WSC=7 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                 | | Lot S-1 | | Lot S-2 |
                Parameter | Unit | As fed | DM | As fed | DM
                CP | % | 7.9 | 9.0 | 9.7 | 11.0
                WSC | % | 7.0 | 8.0 | 6.2 | 7.0
                """)));
  }

  @Test
  void aReferenceNumberIsNoSectionOfReferenceValues() {
    String truth = "RF-2: WSC=8 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                Reference 44-81
                Lot: RF-2
                Analyte          Unit       DM basis
                WSC              %               8.0
                """)));
  }

  @Test
  void aTableOfTypicalValuesBelowIsNotRead() {
    String truth = "TV-1: CP=9 dm, WSC=8 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                Lot: TV-1
                Analyte          Unit       DM basis
                CP               %               9.0
                WSC              %               8.0
                Typical values for grass hay
                Analyte          Unit       DM basis
                CP               %              10.0
                WSC              %              12.0
                """)));
  }

  @Test
  void headingsOfTwoAndThreeLinesAndARemarkColumn() {
    String truth = "TH-1: DM=88.5 af, CP=9.6 dm, WSC=11.2 dm, STARCH=0.9 dm, DE=2.05 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.pages(
                """
                Moorgate Analysts, hay and straw
                Certificate   MG-5 of 12 March 2026
                Your mark: TH-1

                                                Found       Found       Usual for
                Constituent           Unit      in feed     in dry      meadow hay     Remarks
                                                as fed      matter      (dry matter)
                Dry matter            %          88.5                                  normal
                Protein (N x 6.25)    %           8.5         9.6       7 to 13
                Water-soluble carbs   %           9.9        11.2       5 to 15        fairly high
                Starch                %           0.8         0.9       up to 3
                DE for horses         Mcal/kg    1.81        2.05
                """)));
  }

  @Test
  void semicolonsAndAGermanHead() {
    String truth = "GR-2: DM=86.4 af, CP=11.2 dm, WSC=8.8 dm, FE=210 dm";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Untersuchungsbericht Nr | 77/26
                Partie | GR-2
                Alle Angaben bezogen auf die Trockenmasse, ausgenommen Trockensubstanz
                Merkmal | Wert | Einheit
                Trockensubstanz | 864 | g/kg
                Rohprotein | 112 | g/kg
                Wasserlösliche Kohlenhydrate | 88,0 | g/kg
                Eisen | 210 | mg/kg
                """)));
  }

  @Test
  void basisInAFieldWithAnException() {
    String truth = "BF-3: DM=86 af, CP=11 dm, PH=5.4 none";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Basis | DM basis (except pH and dry matter)
                Lot | BF-3
                Test | Unit | Result
                Dry matter | % | 86.0
                CP | % | 11.0
                pH | | 5.4
                """)));
  }

  @Test
  void aSentenceThatGivesMineralsAnotherBasisIsAQuestion() {
    String truth = "MB-1: DM=86 af, CP?basis-not-stated, CA?basis-not-stated";
    assertEquals(
        truth,
        Readings.words(
            Grids.table(
                """
                Results are on dry matter but minerals are as received
                Lot | MB-1
                Test | Unit | Result
                Dry matter | % | 86.0
                CP | % | 11.0
                Calcium | % | 0.5
                """)));
  }

  @Test
  void aRecordTableWithReportColumns() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Laboratory | Certificate no | Revision | Issued | Batch | Feed | Component | Found | Unit of measure | Expressed on
                Fennick Labs | F-9 | 3 | 2026-03-02 | B77 | HAYNUT | WSC | 8.0 | % | dry matter
                Fennick Labs | F-9 | 3 | 2026-03-02 | B77 | HAYNUT | Starch | 1.0 | % | dry matter
                """));
    assertEquals(
        "Fennick Labs F-9 3 Optional[2026-03-02]",
        report.lab()
            + " "
            + report.reportNo()
            + " "
            + report.revision()
            + " "
            + report.reportedOn());
    assertEquals(
        "HAYNUT B77", report.samples().get(0).label() + " " + report.samples().get(0).batch());
    assertEquals("HAYNUT: WSC=8 dm, STARCH=1 dm", Readings.words(report.samples().get(0)));
  }

  @Test
  void recordsOfTwoReportsInOneFileClaimNoNumber() {
    Report report =
        Readings.report(
            Grids.table(
                """
                Report | Lot | Analyte | Result | Unit | Basis
                A-1 | L-1 | WSC | 8.0 | % | DM
                A-2 | L-2 | WSC | 9.0 | % | DM
                """));
    assertEquals("", report.reportNo());
    assertEquals(2, report.samples().size());
  }
}
