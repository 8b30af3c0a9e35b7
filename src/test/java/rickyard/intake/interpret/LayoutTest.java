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
}
