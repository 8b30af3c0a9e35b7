package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Layouts of our own invention: what each must give, figure by figure. */
class LayoutTest {

  @Test
  void aLongTableWithBothBasesGivesTheDryMatterFigures() {
    var grid =
        Grids.table(
            """
            Brook Vale Forage Laboratory
            Lab no: | 4711
            Lot: | N2
            Analyte | Unit | As fed | Dry matter | Method
            Moisture | % | 11.8 | |
            Dry matter | % | 88.2 | 100.0 |
            Crude protein | % | 8.3 | 9.4 | NIR
            Starch | % | 1.1 | 1.2 | wet chemistry
            WSC | % | 9.0 | 10.2 | wet chemistry
            Selenium | ppm | 0.07 | 0.08 | ICP
            """);

    assertEquals(
        "N2: MOISTURE=11.8 af, DM=88.2 af, CP=9.4 dm, STARCH=1.2 dm, WSC=10.2 dm, SE=0.08 dm",
        Readings.words(grid));
  }

  @Test
  void aPageWithTwoColumnsIsReadByPosition() {
    var grid =
        Grids.pages(
            """
            Hollow Farm Analytical Laboratory
            Sample: Top Meadow          Report no: R-17
                                   As Fed     Dry Matter
            Moisture, %              12.0
            Dry Matter, %            88.0
            Crude Protein, %          8.8           10.0
            ADF, %                                  36.2
            Starch, %                 0.9
            WSC, %                    9.7           11.0
            """);

    assertEquals(
        "Top Meadow: MOISTURE=12 af, DM=88 af, CP=10 dm, ADF=36.2 dm, STARCH=0.9 af, WSC=11 dm",
        Readings.words(grid));
  }

  @Test
  void aWideTableWithUnitsInASecondRowGivesASampleForEachRow() {
    var grid =
        Grids.table(
            """
            lot | DM | CP | WSC | Starch | Fe
            | % | % DM | % DM | % DM | mg/kg DM
            N2 | 88.2 | 9.4 | 10.2 | <0.5 | 150
            S1 | 86.0 | 11.0 | 14.5 | 1.5 |
            """);

    assertEquals(
        """
        N2: DM=88.2 af, CP=9.4 dm, WSC=10.2 dm, STARCH<0.5 dm, FE=150 dm
        S1: DM=86 af, CP=11 dm, WSC=14.5 dm, STARCH=1.5 dm""",
        Readings.words(grid));
  }

  @Test
  void aRecordForEachFigureIsGroupedBySample() {
    var grid =
        Grids.table(
            """
            lab_no;lot;analyte;result;unit;basis;method
            """
                    .replace(';', '|')
                + """
                101|N2|Crude protein|9,4|%|DM|NIR
                101|N2|WSC|10,2|%|DM|wet
                102|S1|Crude protein|11,0|%|DM|NIR
                102|S1|Starch|ND|%|DM|wet
                """);

    assertEquals(
        """
        N2: CP=9.4 dm, WSC=10.2 dm
        S1: CP=11 dm, STARCH?detection-limit-not-stated""",
        Readings.words(grid));
  }

  @Test
  void aUnitForTheWholeColumnIsTakenFromItsHeading() {
    var grid =
        Grids.table(
            """
            Test|Result (g/kg DM)|Typical
            Crude protein|94|80-120
            WSC|102|100-150
            Starch|12|5-20
            Calcium|4,5|3-6
            """);

    assertEquals("-: CP=9.4 dm, WSC=10.2 dm, STARCH=1.2 dm, CA=0.45 dm", Readings.words(grid));
  }

  @Test
  void aBasisSaidOnceForThePageHolds() {
    var grid =
        Grids.pages(
            """
            Forage analysis
            All results are reported on a 100 % dry matter basis.

            Moisture      11.5 %
            Crude Protein 10.2 %
            WSC           12.9 %
            Starch         1.4 %
            """);

    assertEquals(
        "-: MOISTURE=11.5 af, CP=10.2 dm, WSC=12.9 dm, STARCH=1.4 dm", Readings.words(grid));
  }

  @Test
  void aBasisSaidInAFootnoteHolds() {
    var grid =
        Grids.table(
            """
            Parameter|Value|Unit
            Crude protein|10.2|%
            Starch|1.4|%
            Results are expressed on a dry matter basis unless otherwise stated.
            """);

    assertEquals("-: CP=10.2 dm, STARCH=1.4 dm", Readings.words(grid));
  }

  @Test
  void withoutAnyBasisNothingIsSettled() {
    var grid =
        Grids.table(
            """
            Parameter|Value|Unit
            Dry matter|88.2|%
            Crude protein|10.2|%
            Starch|1.4|%
            """);

    assertEquals(
        "-: DM=88.2 af, CP?basis-not-stated, STARCH?basis-not-stated", Readings.words(grid));
  }

  @Test
  void sectionsSetTheBasisOfWhatFollows() {
    var grid =
        Grids.pages(
            """
            Dry matter      88.0 %
            As fed basis
            Crude protein    9.0 %
            Dry matter basis
            WSC             11.0 %
            Starch           1.4 %
            """);

    assertEquals("-: DM=88 af, CP=9 af, WSC=11 dm, STARCH=1.4 dm", Readings.words(grid));
  }

  @Test
  void samplesMayStandInColumns() {
    var grid =
        Grids.table(
            """
            Lot|North|South
            Lab no|11|12
            Analyte (% DM)||
            Dry matter|88.0|86.5
            Crude protein|9.4|11.2
            WSC|10.2|14.4
            Starch|1.2|<0.5
            """);

    assertEquals(
        """
        North: DM=88 af, CP=9.4 dm, WSC=10.2 dm, STARCH=1.2 dm
        South: DM=86.5 af, CP=11.2 dm, WSC=14.4 dm, STARCH<0.5 dm""",
        Readings.words(grid));
  }

  @Test
  void samplesInColumnsMayHaveTwoBasesEach() {
    var grid =
        Grids.pages(
            """
                                  Sample A                 Sample B
                             As fed    Dry matter     As fed    Dry matter
            Dry matter %       88.0                     85.0
            Crude protein %     8.8       10.0           8.5       10.0
            WSC %               9.7       11.0          12.8       15.1
            """);

    assertEquals(
        """
        A: DM=88 af, CP=10 dm, WSC=11 dm
        B: DM=85 af, CP=10 dm, WSC=15.1 dm""",
        Readings.words(grid));
  }

  @Test
  void twoTablesMayStandSideBySide() {
    var grid =
        Grids.pages(
            """
                             % DM                              % DM
            Crude protein    10.2         Calcium              0.45
            ADF              36.1         Phosphorus           0.22
            Starch            1.4         Potassium            1.90
            """);

    assertEquals(
        "-: CP=10.2 dm, CA=0.45 dm, ADF=36.1 dm, P=0.22 dm, STARCH=1.4 dm, K=1.9 dm",
        Readings.words(grid));
  }

  @Test
  void aTableMayContinueOnTheNextPageWithoutItsHeading() {
    var grid =
        Grids.pages(
            """
            Lot: N2
                                     As fed   Dry matter
            Dry matter, %             88.0
            Crude protein, %           8.8      10.0
            Page 1 of 2
            """,
            """
            Page 2 of 2
            Starch, %                  1.1       1.2
            WSC, %                     9.7      11.0
            """);

    assertEquals("N2: DM=88 af, CP=10 dm, STARCH=1.2 dm, WSC=11 dm", Readings.words(grid));
  }

  @Test
  void severalSamplesMayFollowEachOther() {
    var grid =
        Grids.pages(
            """
            Report no: 9
            Sample: North Meadow
            Crude protein, % DM      9.4
            Starch, % DM             1.2
            Sample: South Meadow
            Crude protein, % DM     11.4
            Starch, % DM             2.2
            """);

    assertEquals(
        """
        North Meadow: CP=9.4 dm, STARCH=1.2 dm
        South Meadow: CP=11.4 dm, STARCH=2.2 dm""",
        Readings.words(grid));
  }

  /** The heading over the as-fed column is lost: that of the dry matter speaks for its own only. */
  @Test
  void aBasisOverOneColumnIsNoneOfTheColumnBesideIt() {
    var grid =
        Grids.table(
            """
            Sample|A-1
            Test|Unit|Result||Method
            |||Dry matter basis|
            Moisture|%|13.6||NIR
            Dry matter|%|86.4||NIR
            Crude protein|%|18.3|21.2|NIR
            WSC|%|6.2|7.1|NIR
            Starch|%|0.9|1.1|NIR
            """);

    assertEquals(
        "A-1: MOISTURE=13.6 af, DM=86.4 af, CP?printed-twice, WSC?printed-twice, STARCH?printed-twice",
        Readings.words(grid));
  }

  @Test
  void aGermanTableWithDecimalCommasIsRead() {
    var grid =
        Grids.table(
            """
            Probe: Oberwiese 2
            Parameter|Einheit|in der OS|in der TM|Methode
            Trockenmasse|%|86,4||
            Rohprotein|g/kg|82|95|NIR
            Rohasche|g/kg|60|69|NIR
            Stärke|g/kg|10|12|nasschemisch
            Wasserlösliche Kohlenhydrate|g/kg|104|120|nasschemisch
            Zucker|g/kg|86|100|NIR
            """);

    assertEquals(
        "Oberwiese 2: DM=86.4 af, CP=9.5 dm, ASH=6.9 dm, STARCH=1.2 dm, WSC=12 dm",
        Readings.words(grid));
  }

  @Test
  void aFrenchTableIsRead() {
    var grid =
        Grids.table(
            """
            Lot|Pré du haut
            Détermination||sur sec (g/kg)
            Matière sèche|88,1 %|
            Matières azotées totales||102
            Amidon||12,5
            Cendres brutes||71
            """);

    assertEquals(
        "Pré du haut: DM=88.1 af, CP=10.2 dm, STARCH=1.25 dm, ASH=7.1 dm", Readings.words(grid));
  }

  @Test
  void aSpanishTableIsRead() {
    var grid =
        Grids.table(
            """
            Muestra|Prado 3
            Parámetro|Resultado|Unidad
            Humedad|11,0|%
            Proteína bruta|9,8|% MS
            Almidón|1,1|% MS
            Cenizas|7,0|% MS
            """);

    assertEquals(
        "Prado 3: MOISTURE=11 af, CP=9.8 dm, STARCH=1.1 dm, ASH=7 dm", Readings.words(grid));
  }

  @Test
  void aDutchTableIsRead() {
    var grid =
        Grids.table(
            """
            Monster|Perceel 3
            Bepaling|Gehalte|Eenheid
            Droge stof|850|g/kg
            Ruw eiwit|98|g/kg DS
            Zetmeel|11|g/kg DS
            Ruw as|70|g/kg DS
            """);

    assertEquals("Perceel 3: DM=85 af, CP=9.8 dm, STARCH=1.1 dm, ASH=7 dm", Readings.words(grid));
  }

  @Test
  void rangesRatingsAndMeansAreNeverResults() {
    var grid =
        Grids.table(
            """
            Nutrient|Unit|Typical range|Dry matter|District mean|Detection limit|Rating
            Crude protein|%|8-14|10.2|9.9|0.5|high
            Starch|%|0.5-3|ND|1.9|0.3|low
            Iron|ppm|50-300|150|180|1|ok
            """);

    assertEquals("-: CP=10.2 dm, STARCH<0.3 dm, FE=150 dm", Readings.words(grid));
  }

  @Test
  void aShareOfProteinIsNotTaken() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Crude protein|12.0
            Soluble protein, % of CP|35.0
            ADICP, % of CP|8.0
            NDFD 30, % of NDF|48
            Starch|1.2
            """);

    assertEquals("-: CP=12 dm, STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void anNscThatItsOwnArithmeticExplainsIsTaken() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            WSC|10.2
            ESC|6.4
            Starch|1.2
            NSC|11.4
            """);

    assertEquals(
        "-: WSC=10.2 dm, ESC=6.4 dm, STARCH=1.2 dm, NSC_WSC=11.4 dm", Readings.words(grid));
  }

  @Test
  void anNscOfNoArithmeticIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Starch|1.2
            NSC|11.4
            """);

    assertEquals("-: STARCH=1.2 dm, NSC?nsc-definition-unknown", Readings.words(grid));
  }

  @Test
  void anNscDefinedInAFootnoteIsTaken() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Starch|1.2
            NSC*|11.4
            * NSC = ESC + starch
            """);

    assertEquals("-: STARCH=1.2 dm, NSC_ESC=11.4 dm", Readings.words(grid));
  }

  @Test
  void nitrateWithoutItsFormIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|Unit|Dry matter
            Nitrate|ppm|1200
            Nitrate-N|ppm|271
            Iron|ppm|120
            """);

    assertEquals("-: NITRATE?nitrate-form-unknown, NO3_N=271 dm, FE=120 dm", Readings.words(grid));
  }

  @Test
  void ruminantEnergyIsNotTaken() {
    var grid =
        Grids.table(
            """
            Analyte|Unit|Dry matter
            TDN|%|56
            NEL|Mcal/lb|0.55
            DE|Mcal/lb|1.0
            Horse DE|Mcal/lb|0.95
            Starch|%|1.2
            """);

    assertEquals("-: DE=2.094391 dm, STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void aNumberThatMayBeTwoThingsIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|mg/kg DM
            Iron|1.200
            Zinc|30
            """);

    assertEquals("-: FE?number-ambiguous, ZN=30 dm", Readings.words(grid));
  }

  @Test
  void aNumberThatTheFileSettlesIsTaken() {
    var grid =
        Grids.table(
            """
            Analyte|mg/kg DM
            Iron|1.200
            Zinc|30,5
            Copper|8,25
            """);

    assertEquals("-: FE=1200 dm, ZN=30.5 dm, CU=8.25 dm", Readings.words(grid));
  }

  @Test
  void aLetterAmongDigitsIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Crude protein|1O.2
            Starch|l.2
            WSC|10.2*
            """);

    assertEquals(
        "-: CP?letters-in-number, STARCH?letters-in-number, WSC=10.2 dm", Readings.words(grid));
  }

  @Test
  void blankDashAndNotTestedGiveNothing() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Crude protein|10.2
            Starch|
            WSC|-
            ESC|not tested
            Sodium|NA
            Ash|0
            """);

    assertEquals("-: CP=10.2 dm, ASH?outside-usual-range", Readings.words(grid));
  }

  @Test
  void aRowForEachBasisIsReadAsOneSample() {
    var grid =
        Grids.table(
            """
            Lot|Basis|CP %|WSC %|Starch %
            N2|As fed|8.8|9.7|1.1
            |Dry matter|10.0|11.0|1.2
            S1|As fed|9.0|10.0|0.9
            |Dry matter|10.2|11.4|1.0
            """);

    assertEquals(
        """
        N2: CP=10 dm, WSC=11 dm, STARCH=1.2 dm
        S1: CP=10.2 dm, WSC=11.4 dm, STARCH=1 dm""",
        Readings.words(grid));
  }

  @Test
  void typicalRowsOfAWideTableAreLeftOut() {
    var grid =
        Grids.table(
            """
            Sample|DM %|CP % DM|NDF % DM|Starch % DM
            North|88.0|10.2|60.1|1.2
            Typical|86.0|11.0|58.0|1.5
            Mean|87.0|11.1|58.2|1.6
            South|86.1|12.2|58.1|1.7
            """);

    assertEquals(
        """
        North: DM=88 af, CP=10.2 dm, NDF=60.1 dm, STARCH=1.2 dm
        South: DM=86.1 af, CP=12.2 dm, NDF=58.1 dm, STARCH=1.7 dm""",
        Readings.words(grid));
  }

  @Test
  void columnsWithoutHeadingsAreSettledByTheirRatio() {
    var grid =
        Grids.table(
            """
            Moisture|%|12.0|
            Dry matter|%|88.0|
            Crude protein|%|9.0|10.2
            ADF|%|31.8|36.1
            NDF|%|52.9|60.1
            Starch|%|1.1|1.2
            """);

    assertEquals(
        "-: MOISTURE=12 af, DM=88 af, CP=10.2 dm, ADF=36.1 dm, NDF=60.1 dm, STARCH=1.2 dm",
        Readings.words(grid));
  }

  @Test
  void columnsWithoutHeadingsAndRatioAreAQuestion() {
    var grid =
        Grids.table(
            """
            Crude protein|%|9.0|10.2
            ADF|%|31.8|36.1
            """);

    assertEquals("-: CP?column-not-known, ADF?column-not-known", Readings.words(grid));
  }

  @Test
  void swappedColumnsAreAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|Unit|As fed|Dry matter
            Dry matter|%|88.0|
            Crude protein|%|10.2|9.0
            ADF|%|36.1|31.8
            Starch|%|1.2|1.1
            """);

    assertEquals(
        "-: DM=88 af, CP?columns-swapped, ADF?columns-swapped, STARCH?columns-swapped",
        Readings.words(grid));
  }

  @Test
  void oneMisreadLineIsFoundByTheRatio() {
    var grid =
        Grids.table(
            """
            Analyte|Unit|As fed|Dry matter
            Dry matter|%|88.0|
            Crude protein|%|9.0|10.2
            ADF|%|31.8|31.6
            NDF|%|52.9|60.1
            """);

    assertEquals("-: DM=88 af, CP=10.2 dm, ADF?identity-broken, NDF=60.1 dm", Readings.words(grid));
  }

  @Test
  void dryMatterInTheMoistureLineIsCaught() {
    var grid =
        Grids.table(
            """
            Analyte|As fed %
            Moisture|90.00
            Crude protein|17.02
            Fat|.40
            NDF|42.90
            Ash|7.80
            """);

    assertEquals(
        "-: MOISTURE?order-broken, CP=17.02 af, EE=0.4 af, NDF=42.9 af, ASH=7.8 af",
        Readings.words(grid));
  }

  @Test
  void aFlatRecordWithUnderscoresIsRead() {
    var grid =
        Grids.table(
            """
            lab_no|lot|dm_pct|cp_pct_dm|wsc_pct_dm|starch_pct_dm|ca_g_per_kg_dm
            77|N2|88.0|10.2|11.0|1.2|4.5
            """);

    assertEquals(
        "N2: DM=88 af, CP=10.2 dm, WSC=11 dm, STARCH=1.2 dm, CA=0.45 dm", Readings.words(grid));
  }

  @Test
  void theCellsOwnUnitIsTaken() {
    var grid =
        Grids.table(
            """
            Analyte|Dry matter
            Crude protein|10.2 %
            Calcium|4.5 g/kg
            Iron|150 ppm
            Selenium|0.08 mg/kg
            """);

    assertEquals("-: CP=10.2 dm, CA=0.45 dm, FE=150 dm, SE=0.08 dm", Readings.words(grid));
  }

  @Test
  void aMissingUnitIsAQuestionUnlessFiguresProveIt() {
    var grid =
        Grids.table(
            """
            Analyte|Dry matter
            Moisture|12.0
            Dry matter|88.0
            ADF|41
            NDF|53
            RFV|100
            Calcium|0.45
            """);

    assertEquals(
        "-: MOISTURE=12 af, DM=88 af, ADF=41 dm, NDF=53 dm, RFV=100 none, CA?unit-not-stated",
        Readings.words(grid));
  }

  @Test
  void headingsMayRunOverTwoLines() {
    var grid =
        Grids.pages(
            """
                        Dry       Crude     Water soluble
            Lot         matter    protein   carbohydrates   Starch
                        %         % DM      % DM            % DM
            N2          88.0      10.2      11.0            1.2
            """);

    assertEquals("N2: DM=88 af, CP=10.2 dm, WSC=11 dm, STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void aLabelMayRunOverTwoLines() {
    var grid =
        Grids.pages(
            """
                                  Dry matter basis, %
            Crude protein            10.2
            Soluble
            protein                  25.0
            Water soluble
            carbohydrates            11.0
            """);

    assertEquals("-: CP=10.2 dm, WSC=11 dm", Readings.words(grid));
  }

  @Test
  void fieldsMayStandAboveTheirValues() {
    var grid =
        Grids.pages(
            """
            Lab no     Sample           Date sampled
            9001       Top Meadow       2026-06-30

                          % DM
            Starch        1.2
            WSC          11.0
            """);

    assertEquals("Top Meadow: STARCH=1.2 dm, WSC=11 dm", Readings.words(grid));
  }

  @Test
  void aSecondTableUnderUnknownHeadingsIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|As fed %|Dry matter %
            Crude protein|9.0|10.2
            |This autumn|Last autumn
            Starch|1.2|1.9
            """);

    assertEquals("-: CP=10.2 dm, STARCH?column-not-understood", Readings.words(grid));
  }

  @Test
  void referenceSectionsAreLeftOut() {
    var grid =
        Grids.pages(
            """
                             % DM
            Crude protein    10.2
            Starch            1.2
            Typical values for grass hay
            WSC              12.0
            ESC               7.0
            """);

    assertEquals("-: CP=10.2 dm, STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void everyFigureMayStandInASentenceOfItsOwn() {
    var grid =
        Grids.pages(
            """
            Sample: N2
            Crude protein: 10.2 % DM
            Starch = 1.2 % DM
            WSC 11.0 % DM
            Moisture: 12.0 %
            """);

    assertEquals("N2: CP=10.2 dm, STARCH=1.2 dm, WSC=11 dm, MOISTURE=12 af", Readings.words(grid));
  }

  @Test
  void contradictingBasesAreAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|Unit|As fed
            Crude protein|% DM|10.2
            Starch|%|1.2
            """);

    assertEquals("-: CP?basis-contradiction, STARCH=1.2 af", Readings.words(grid));
  }

  @Test
  void aFootnoteThatExceptsAnAnalyteIsKept() {
    var grid =
        Grids.table(
            """
            Analyte|Result|Unit
            Crude protein|10.2|%
            NO3-N|271|ppm
            All results on dry matter basis except NO3-N
            """);

    assertEquals("-: CP=10.2 dm, NO3_N?basis-not-stated", Readings.words(grid));
  }

  @Test
  void adviceAboutBasesStatesNone() {
    var grid =
        Grids.table(
            """
            Analyte|Result|Unit
            Crude protein|9.2|%
            Horse owners should compare hays on a dry matter basis.
            """);

    assertEquals("-: CP?basis-not-stated", Readings.words(grid));
  }

  @Test
  void twoUnitsOfOneFigureAgree() {
    var grid =
        Grids.table(
            """
            Analyte|% DM|g/lb DM
            Crude protein|10.2|46.3
            Calcium|0.45|2.04
            """);

    assertEquals("-: CP=10.207403 dm, CA=0.449743 dm", Readings.words(grid));
  }

  @Test
  void aDifferentFigurePrintedTwiceIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Starch|1.2
            WSC|11.0
            Starch|2.1
            """);

    assertEquals("-: STARCH?printed-twice, WSC=11 dm", Readings.words(grid));
  }

  @Test
  void sugarIsNeitherWscNorEsc() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Sugar|9.1
            Starch|1.2
            """);

    assertEquals("-: SUGAR?sugar-not-defined, STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void unknownLabelsCostNothingElse() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            Glimmer factor|77
            Starch|1.2
            """);

    assertEquals("-: STARCH=1.2 dm", Readings.words(grid));
  }

  @Test
  void theUnitMayBeOwnColumnAfterTheFigure() {
    var grid =
        Grids.table(
            """
            Parameter|Result|Unit|Basis|Method
            Crude protein|102|g/kg|DM|NIR
            Starch|12|g/kg|DM|wet
            Moisture|120|g/kg||oven
            """);

    assertEquals("-: CP=10.2 dm, STARCH=1.2 dm, MOISTURE=12 af", Readings.words(grid));
  }

  @Test
  void moistureAndDryMatterMustMakeAHundred() {
    var grid =
        Grids.table(
            """
            Analyte|%
            Moisture|12.0
            Dry matter|89.0
            """);

    assertEquals("-: MOISTURE?identity-broken, DM?identity-broken", Readings.words(grid));
  }

  @Test
  void aPartLargerThanItsWholeIsAQuestion() {
    var grid =
        Grids.table(
            """
            Analyte|% DM
            WSC|6.0
            ESC|9.0
            NDF|60
            ADF|36
            """);

    assertEquals(
        "-: WSC?order-broken, ESC?order-broken, NDF=60 dm, ADF=36 dm", Readings.words(grid));
  }
}
