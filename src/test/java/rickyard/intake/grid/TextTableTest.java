package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextTableTest {

  private static String rows(String text) {
    return Looking.rows(Looking.grid(Looking.open(text)));
  }

  @Test
  void blankCellsStayBlankAndColumnsKeepCounting() {
    assertEquals(
        "1: 1=Analyte | 2=As fed | 3=Dry matter\n2: 1=ADF | 3=36.2\n4: 1=NDF | 2=50.1",
        rows("Analyte,As fed,Dry matter\nADF,,36.2\n\nNDF,50.1,\n"));
  }

  @Test
  void aDecimalCommaIsNoDelimiterInASemicolonTable() {
    assertEquals(
        "1: 1=Probe | 2=TS | 3=Zucker\n2: 1=a | 2=1,2 | 3=3,4\n3: 1=b | 2=5,6 | 3=7,8",
        rows("Probe;TS;Zucker\na;1,2;3,4\nb;5,6;7,8\n"));
  }

  @Test
  void figuresAloneWithDecimalCommasAreStillDividedBySemicolons() {
    assertEquals("1: 1=1,2 | 2=3,4\n2: 1=5,6 | 2=7,8", rows("1,2;3,4\n5,6;7,8\n"));
  }

  @Test
  void aCommaTableKeepsSemicolonsInItsRemarks() {
    assertEquals(
        "1: 1=Lot | 2=DM | 3=Remark\n2: 1=H1 | 2=88.1 | 3=dusty; keep dry\n3: 1=H2 | 2=90.2 | 3=ok; fine",
        rows("Lot,DM,Remark\nH1,88.1,dusty; keep dry\nH2,90.2,ok; fine\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void eachDelimiterIsFoundBelowALetterHead(String mark) {
    String text =
        "Report of analysis\nSample received: 3 May\n\n"
            + String.join(mark, "Item", "Value", "Unit")
            + "\n"
            + String.join(mark, "Crude protein", "11.2", "%")
            + "\n"
            + String.join(mark, "ADF", "36.2", "%")
            + "\n";
    Grid grid = Looking.grid(Looking.open(text));
    assertEquals(Grid.Kind.TABLE, grid.kind());
    assertTrue(
        Looking.rows(grid).endsWith("5: 1=Crude protein | 2=11.2 | 3=%\n6: 1=ADF | 2=36.2 | 3=%"),
        Looking.rows(grid));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "IBM850", "x-MacRoman"})
  void eachEncodingIsFoundWithoutAMark(String charset) {
    String text = "Prüfgröße;Wert µ\nRohasche für Süßgräser;7,5\nTrockensubstanz größer;88,2\n";
    String unmarked = charset.equals("IBM850") || charset.equals("x-MacRoman") ? "u" : "µ";
    Opened opened = Looking.open(text.replace("µ", unmarked).getBytes(Charset.forName(charset)));
    assertTrue(
        Looking.rows(Looking.grid(opened)).contains("1=Rohasche für Süßgräser | 2=7,5"),
        Looking.rows(Looking.grid(opened)));
    assertEquals(
        charset.equals("UTF-8") ? List.of() : List.of("encoding-guessed"),
        Looking.grid(opened).cautions());
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "UTF-32LE"})
  void aByteOrderMarkDecides(String charset) {
    byte[] bytes = "\uFEFFé,1\nü,2\n".getBytes(Charset.forName(charset));
    Grid grid = Looking.grid(Looking.open(bytes));
    assertEquals("1: 1=é | 2=1\n2: 1=ü | 2=2", Looking.rows(grid));
    assertEquals(List.of(), grid.cautions());
  }

  @Test
  void anUnclosedQuoteDoesNotSwallowTheRest() {
    Grid grid =
        Looking.grid(Looking.open("Lot,Name,DM\nH1,\"north,88.1\nH2,east,89.0\nH3,west,90.0\n"));
    assertEquals(List.of("quotes-unbalanced"), grid.cautions());
    assertEquals(
        "1: 1=Lot | 2=Name | 3=DM\n2: 1=H1 | 2=\"north | 3=88.1\n3: 1=H2 | 2=east | 3=89.0\n4: 1=H3 | 2=west | 3=90.0",
        Looking.rows(grid));
  }

  @Test
  void aStrayQuoteThatAnotherOneClosesDoesNotSwallowRows() {
    Grid grid =
        Looking.grid(Looking.open("Lot,Name,DM\nH1,\"north,88.1\nH2,east,89.0\nH3,\"west,90.0\n"));
    assertEquals(List.of("quotes-unbalanced"), grid.cautions());
    assertTrue(Looking.rows(grid).contains("3: 1=H2 | 2=east | 3=89.0"), Looking.rows(grid));
  }

  @Test
  void aLineThatCannotBeDividedWithCertaintyStaysWhole() {
    Grid grid = Looking.grid(Looking.open("Lot,Name,DM\nH1,\"north, high,88.1\nH2,east,89.0\n"));
    assertTrue(Looking.rows(grid).contains("2: 1=H1,\"north, high,88.1\n"), Looking.rows(grid));
  }

  @Test
  void quotedLineBreaksStayInOneRecord() {
    assertEquals(
        "1: 1=Lot | 2=Remark\n2: 1=H1 | 2=first line second line\n3: 1=H2 | 2=ok",
        rows("Lot,Remark\nH1,\"first line\nsecond line\"\nH2,ok\n"));
  }

  @Test
  void aLineThatNamesTheDelimiterIsObeyedAndCounted() {
    assertEquals("2: 1=a | 2=1,5\n3: 1=b | 2=2,5", rows("sep=;\na;1,5\nb;2,5\n"));
  }

  @Test
  void aListingIsDividedByRunsOfSpacesAndKeepsPositions() {
    Grid grid =
        Looking.grid(
            Looking.open(
                """
                                     As fed   Dry matter
                Crude protein          10.1         11.5
                ADF                                 36.2
                """));
    assertEquals(Grid.Kind.PLACED, grid.kind());
    assertEquals(
        "1: 1=As fed | 2=Dry matter\n2: 1=Crude protein | 2=10.1 | 3=11.5\n3: 1=ADF | 2=36.2",
        Looking.rows(grid));
    Cell head = grid.pages().get(0).rows().get(0).cells().get(1);
    Cell value = grid.pages().get(0).rows().get(2).cells().get(1);
    assertEquals(1.0, head.overlap(value));
  }

  @Test
  void aListingWithDecimalCommasIsNoCommaTable() {
    Grid grid =
        Looking.grid(Looking.open("Rohprotein      10,1    11,5\nADF             31,9    36,2\n"));
    assertEquals(Grid.Kind.PLACED, grid.kind());
    assertEquals(
        "1: 1=Rohprotein | 2=10,1 | 3=11,5\n2: 1=ADF | 2=31,9 | 3=36,2", Looking.rows(grid));
  }

  @Test
  void leadersDivideAndADoubtfulLastDotIsLeftAlone() {
    assertEquals(
        "1: 1=Protein | 2=11.2 %\n2: 1=Starch | 2=0.9\n3: 1=Ash ......5\n4: 1=Calcium | 2=5",
        rows("Protein ....... 11.2 %\nStarch.......0.9\nAsh ......5\nCalcium . . . . 5\n"));
  }

  @Test
  void aPointlessSpaceIsJustASpace() {
    assertEquals("1: 1=a b | 2=1 200", rows("a\u00A0b,1\u202F200\n"));
  }

  @Test
  void textThatTurnsDirectionIsCautioned() {
    assertEquals(
        List.of("hidden-text"), Looking.grid(Looking.open("Lot,DM\nH1,\u202E1.88\n")).cautions());
    assertEquals("1: 1=Lot | 2=DM\n2: 1=H1 | 2=\uFFFD1.88", rows("Lot,DM\nH1,\u202E1.88\n"));
  }

  @Test
  void aRowThatIsNotAsWideAsItsHeadIsCautioned() {
    String head = "Lot;CP;WSC;Starch;pH\n";
    String fine = "%;%;%\nH1;8.9;9.4;0.7;\nH2;9.0;9.1;;\n";
    assertEquals(List.of(), Looking.grid(Looking.open(head + fine)).cautions());
    for (String row : List.of("H3;8.99.4;0.7;5.1\n", "H3;8;9;9.4;0.7;5.1\n", "H3;8.9;9.4\n")) {
      assertEquals(
          List.of("readings-differ"), Looking.grid(Looking.open(head + fine + row)).cautions());
    }
    // The head itself lost a delimiter: a blank at a row's end does not make up for it.
    assertEquals(
        List.of("readings-differ"),
        Looking.grid(Looking.open(head.replace("CP;W", "CPW") + "H1;8.9;9.4;0.7;\n")).cautions());
  }

  @Test
  void aTextInTwoEncodingsIsRefusedNotHalfLost() {
    byte[] wide = "Lot,DM\nH1,88.1\nH3,87.0\n".getBytes(StandardCharsets.UTF_16LE);
    byte[] narrow = "H2,90.0\n".getBytes(StandardCharsets.UTF_8);
    byte[] both = Arrays.copyOf(wide, wide.length + narrow.length);
    System.arraycopy(narrow, 0, both, wide.length, narrow.length);
    assertEquals("binary", Looking.code(Looking.open(both)));
  }

  @Test
  void tableColumnsLieSideBySide() {
    Cell second =
        Looking.grid(Looking.open("a,b\nc,d\n")).pages().get(0).rows().get(0).cells().get(1);
    assertEquals(new Cell("b", 100, 199, 2), second);
  }

  @Test
  void decimalCommasInPlainLinesAreNeverDivided() {
    assertEquals("1: 1=DM: 88,1\n2: 1=ADF: 36,2", rows("DM: 88,1\nADF: 36,2\n"));
    assertEquals(
        "1: 1=Farm, North\n2: 1=ADF 36,2\n3: 1=NDF 50,1",
        rows("Farm, North\nADF 36,2\nNDF 50,1\n"));
    assertEquals("1: 1=12,5\n2: 1=13,1", rows("12,5\n13,1\n"));
  }

  @Test
  void unquotedDecimalCommasInACommaTableAreCautioned() {
    Grid grid =
        Looking.grid(Looking.open("Analyte,Value,Unit\nK,1,2,%\nFe,120,mg/kg\nZn,20,mg/kg\n"));
    assertEquals(List.of("readings-differ"), grid.cautions());
    assertEquals(
        List.of(),
        Looking.grid(Looking.open("Lot,H1\n\nAnalyte,AF,DM\nFe,110,120\nZn,20,22\n")).cautions());
  }

  @Test
  void linesDrawnWithCharactersAreNoCells() {
    assertEquals(
        "2: 2=ADF | 3=36.2\n4: 2=NDF | 3=-",
        rows("+-----+------+\n| ADF | 36.2 |\n+-----+------+\n| NDF | - |\n+-----+------+\n"));
  }

  @Test
  void aColonAtTheHeadOfAValueBelongsToItsName() {
    assertEquals(
        "1: 1=Sample ID | 2=H-12\n2: 1=ADF | 2=36.2",
        rows("Sample ID ..... : H-12\nADF ........... : 36.2\n"));
  }

  @Test
  void wholeNumbersBelowNumberedHeadsAreStillDivided() {
    assertEquals(
        "1: 1=Analyte | 2=Lot 1 | 3=Lot 2\n2: 1=Fe | 2=120 | 3=135\n3: 1=Zn | 2=20 | 3=22",
        rows("Analyte,Lot 1,Lot 2\nFe,120,135\nZn,20,22\n"));
    assertEquals(
        "1: 1=H1 | 2=88.1 | 3=120 | 4=35\n2: 1=H2 | 2=90.0 | 3=99 | 4=20",
        rows("H1,88.1,120,35\nH2,90.0,99,20\n"));
  }
}
