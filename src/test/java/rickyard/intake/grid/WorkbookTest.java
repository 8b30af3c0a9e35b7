package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.dhatim.fastexcel.VisibilityState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Workbooks become cells with their places, and with the numbers that they hold. */
class WorkbookTest {

  /** Each cell as sheet, row, column, text and nature where it is not printed. */
  private static List<String> cells(byte[] bytes) {
    List<String> cells = new ArrayList<>();
    for (Page page : Looking.grid(bytes).pages()) {
      for (Row row : page.rows()) {
        for (Cell cell : row.cells()) {
          String nature = cell.nature() == Cell.Nature.PRINTED ? "" : " " + cell.nature();
          cells.add(
              "%d:%d:%d %s%s"
                  .formatted(page.number(), row.number(), cell.column(), cell.text(), nature));
        }
      }
    }
    return cells;
  }

  private static byte[] formatted(double number, String format) {
    return Books.xlsx(
        book -> {
          var sheet = book.newWorksheet("One");
          sheet.value(0, 0, number);
          sheet.style(0, 0).format(format).set();
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          7.456               | 0              | 7.456 STORED
          7.199999999999999   | 0.00           | 7.2 STORED
          0.30000000000000004 | 0.0            | 0.3 STORED
          0.094               | 0.0%           | 9.4% STORED
          0.0936              | 0%             | 9.36% STORED
          9.4                 | 0.0%           | 940% STORED
          94                  | 0.0" g/kg"     | 94 g/kg STORED
          0.5                 | "<"0.0         | <0.5 STORED
          0.00001             | 0.00E+00       | 0.00001 STORED
          1234.5              | #,##0.00       | 1234.5 STORED
          -7.4                | 0.0            | -7.4 STORED
          7456                | 0.0,           | 7456 RESHAPED
          7.5                 | # ?/?          | 7.5 RESHAPED
          46087               | dd.mm.yyyy     | 2026-03-06 DATED
          46087.5             | yyyy-mm-dd hh:mm | 2026-03-06 12:00 DATED
          """)
  void aNumberIsShownAsItsCellShowsItWithAllItsDigits(
      double number, String format, String expected) {
    assertEquals(List.of("1:1:1 " + expected), cells(formatted(number, format)));
    byte[] old =
        Books.xls(
            book -> {
              CellStyle style = book.createCellStyle();
              style.setDataFormat(book.createDataFormat().getFormat(format));
              var cell = book.createSheet("One").createRow(0).createCell(0);
              cell.setCellValue(number);
              cell.setCellStyle(style);
            });
    assertEquals(List.of("1:1:1 " + expected), cells(old), "old workbook");
  }

  @Test
  void aFormatThatShowsNothingHidesItsNumber() {
    byte[] book =
        Books.xlsx(
            b -> {
              var sheet = b.newWorksheet("One");
              sheet.value(0, 0, "WSC");
              sheet.value(0, 1, 7.4);
              sheet.style(0, 1).format(";;;").set();
            });
    assertEquals(List.of("1:1:1 WSC"), cells(book));
  }

  @Test
  void textStaysTextAndPlacesStayPlaces() {
    byte[] book =
        Books.xlsx(
            b -> {
              var sheet = b.newWorksheet("One");
              sheet.value(1, 2, "007");
              sheet.value(3, 2, true);
              sheet.value(3, 4, " 7,4\n% ");
            });
    assertEquals(List.of("1:2:3 007", "1:4:3 TRUE", "1:4:5 7,4 %"), cells(book));
  }

  @Test
  void whatIsHiddenIsNotPrintedAndShiftsNoColumn() {
    byte[] book =
        Books.xlsx(
            b -> {
              var sheet = b.newWorksheet("One");
              sheet.value(0, 0, "WSC");
              sheet.value(0, 1, 99);
              sheet.value(0, 2, 7.4);
              sheet.value(1, 0, "hidden row");
              sheet.value(2, 0, "ESC");
              sheet.hideColumn(1);
              sheet.hideRow(1);
              var draft = b.newWorksheet("Draft");
              draft.value(0, 0, "old figures");
              draft.setVisibilityState(VisibilityState.VERY_HIDDEN);
              b.newWorksheet("Two").value(0, 0, "second");
            });
    assertEquals(
        List.of("1:1:1 WSC", "1:1:3 7.4 STORED", "1:3:1 ESC", "2:1:1 second"), cells(book));
    assertEquals(List.of("hidden-text"), Looking.grid(book).cautions());
    byte[] old =
        Books.xls(
            b -> {
              var sheet = b.createSheet("One");
              var row = sheet.createRow(0);
              row.createCell(0).setCellValue("WSC");
              row.createCell(1).setCellValue(99);
              row.createCell(2).setCellValue(7.4);
              var second = sheet.createRow(1);
              second.createCell(0).setCellValue("hidden row");
              second.setZeroHeight(true);
              sheet.setColumnHidden(1, true);
              b.createSheet("Draft").createRow(0).createCell(0).setCellValue("old");
              b.setSheetHidden(1, true);
            });
    assertEquals(List.of("1:1:1 WSC", "1:1:3 7.4 STORED"), cells(old));
  }

  @Test
  void aMergedHeadingSpansItsColumnsAndAMergedNameItsRows() {
    byte[] book =
        Books.xlsx(
            b -> {
              var sheet = b.newWorksheet("One");
              sheet.value(0, 1, "Dry matter");
              sheet.range(0, 1, 0, 2).merge();
              sheet.value(1, 0, "LOT-1");
              sheet.value(1, 1, 1);
              sheet.value(2, 1, 2);
              sheet.range(1, 0, 2, 0).merge();
            });
    assertEquals(
        List.of(
            "1:1:2 Dry matter", "1:2:1 LOT-1", "1:2:2 1 STORED", "1:3:1 LOT-1", "1:3:2 2 STORED"),
        cells(book));
    assertEquals(299, Looking.grid(book).pages().get(0).rows().get(0).cells().get(0).right(), 1e-9);
  }

  @Test
  void formulasAndErrorsAreMarked() {
    byte[] book =
        Books.zip(
            Books.parts(
                "<sheetData><row r='1'>"
                    + "<c r='A1'><f>B1*2</f><v>7.4</v></c>"
                    + "<c r='B1' t='e'><v>#N/A</v></c>"
                    + "<c r='C1'><f>B1*2</f></c>"
                    + "<c r='D1' t='str'><f>\"W\"&amp;\"SC\"</f><v>WSC</v></c>"
                    + "<c r='E1' t='e'><f>B9</f><v>#REF!</v></c>"
                    + "<c r='F1'><v>88.50</v></c>"
                    + "</row></sheetData>"));
    assertEquals(
        List.of(
            "1:1:1 7.4 COMPUTED",
            "1:1:2 #N/A FAILED",
            "1:1:3 (formula) FAILED",
            "1:1:4 WSC COMPUTED",
            "1:1:5 #REF! FAILED",
            "1:1:6 88.5 STORED"),
        cells(book));
    byte[] old =
        Books.xls(
            b -> {
              var row = b.createSheet("One").createRow(0);
              row.createCell(0).setCellFormula("3.7*2");
              b.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(0));
              row.createCell(1).setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.NA);
            });
    assertEquals(List.of("1:1:1 7.4 COMPUTED", "1:1:2 #N/A FAILED"), cells(old));
  }

  @Test
  void oldWorkbooksMergeAsNewOnesDo() {
    byte[] old =
        Books.xls(
            b -> {
              var sheet = b.createSheet("One");
              sheet.createRow(0).createCell(1).setCellValue("Dry matter");
              sheet.addMergedRegion(new CellRangeAddress(0, 0, 1, 2));
            });
    assertEquals(299, Looking.grid(old).pages().get(0).rows().get(0).cells().get(0).right(), 1e-9);
  }

  @Test
  void anOpenDocumentWorkbookIsReadAlike() {
    String table =
        "<table:table table:name='One'>"
            + "<table:table-column/><table:table-column table:visibility='collapse'/>"
            + "<table:table-row><table:table-cell office:value-type='string'>"
            + "<text:p>WSC</text:p></table:table-cell>"
            + "<table:table-cell office:value-type='float' office:value='99'><text:p>99</text:p>"
            + "</table:table-cell>"
            + "<table:table-cell office:value-type='float' office:value='7.456'>"
            + "<text:p>7,5</text:p><office:annotation><text:p>8.1</text:p></office:annotation>"
            + "</table:table-cell>"
            + "<table:table-cell office:value-type='percentage' office:value='0.094'>"
            + "<text:p>9.4%</text:p></table:table-cell>"
            + "<table:table-cell office:value-type='date' office:date-value='2026-03-06'>"
            + "<text:p>06/03/26</text:p></table:table-cell>"
            + "<table:table-cell table:formula='of:=[.C1]*2' office:value-type='float'"
            + " office:value='14.9'><text:p>14.9</text:p></table:table-cell>"
            + "<table:table-cell table:number-columns-repeated='16000'/></table:table-row>"
            + "<table:table-row table:number-rows-repeated='1000000'><table:table-cell"
            + " table:number-columns-repeated='16384'/></table:table-row>"
            + "</table:table>";
    List<String> expected =
        List.of(
            "1:1:1 WSC",
            "1:1:3 7.456 STORED",
            "1:1:4 9.4% STORED",
            "1:1:5 2026-03-06 DATED",
            "1:1:6 14.9 COMPUTED");
    assertEquals(expected, cells(Books.ods(table)));
    assertEquals(expected, cells(Books.xml(Books.content("office:document", table))), "flat");
  }

  @Test
  void theContentDecidesWhereverTheWorkbookLies() {
    byte[] book = formatted(7.4, "0.0");
    assertEquals("workbook", new DocumentReader().open(book, "report.csv").kind());
    byte[] zip = Books.zip(Map.of("report.dat", book));
    List<Unfolding.Leaf> leaves =
        Unfolding.of(new DocumentReader(), zip, "x.zip", ReadLimits.DEFAULT);
    assertEquals(List.of("zip", "workbook"), leaves.stream().map(l -> l.opened().kind()).toList());
  }

  @Test
  void datesOfADateCellAreDays() {
    byte[] book =
        Books.xlsx(
            b -> {
              var sheet = b.newWorksheet("One");
              sheet.value(0, 0, LocalDate.of(2026, 3, 6));
              sheet.style(0, 0).format("d.m.yy").set();
            });
    assertTrue(cells(book).contains("1:1:1 2026-03-06 DATED"));
  }
}
