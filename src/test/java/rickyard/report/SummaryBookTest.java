package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import rickyard.report.csv.CsvOut;
import rickyard.report.view.MorningView;

/** The workbook, opened by another library than the one that wrote it. */
class SummaryBookTest {
  private static final List<String> SHEETS =
      List.of("lots", "horses", "diets", "questions", "follow-ups");
  private static final Set<String> FAMILIES = Set.of(Outputs.DATA, Outputs.XLSX);

  /** Left empty in both where unknown, and numbers elsewhere. */
  private static final Set<String> NUMBERS =
      Set.of(
          "stock_kg",
          "nsc_wsc",
          "nsc_esc",
          "starch",
          "dm_kg",
          "dm_pct_bw",
          "nsc_wsc_pct_dm",
          "u",
          "p_over",
          "supply",
          "low",
          "high",
          "requirement",
          "pct_of_requirement",
          "max_tolerable");

  @Test
  void everySheetHasTheCellsOfItsCsvAsNumbersDaysAndText() throws IOException {
    assertSame(Outputs.of(SampleView.of(24, 12), FAMILIES), "24 horses");
    assertSame(Outputs.of(SampleView.empty(), FAMILIES), "no horse");
  }

  @Test
  void hostileNamesStayTextInTheirCells() throws IOException {
    Random random = new Random(7);
    List<String> given =
        List.of("_x003D_1+1", "a\rb", " a ", "_x000D_", "=cmd()", "<v>1</v>", "a\tb\nc", "\r=1");
    for (int round = 0; round < 40; round++) {
      String about = "seed 7, round " + round;
      MorningView view =
          SampleView.of(
              7,
              4,
              t ->
                  random.nextBoolean()
                      ? given.get(random.nextInt(given.size()))
                      : HostileNames.next(random, random.nextInt(9)));
      assertSame(Outputs.of(view, FAMILIES), about);
    }
  }

  @Test
  void theFirstSheetHasTheCallsWithNumberAndWhatToDo() throws IOException {
    try (XSSFWorkbook book = book(Outputs.of(SampleView.of(24, 12), FAMILIES))) {
      XSSFSheet calls = book.getSheetAt(0);
      assertEquals(8, calls.getLastRowNum());
      List<String> first = new ArrayList<>();
      for (int column = 0; column < 5; column++) {
        first.add(calls.getRow(1).getCell(column).getStringCellValue());
      }
      assertEquals(
          List.of(
              "Bramble (H1)",
              "now",
              "Ada Thornbeck (C1)",
              "0555 010 23",
              "A day: Upper Ley (L1) 8.75 kg (19.29 lb) from co-op; no more Long Meadow, 2nd cut"
                  + " (L2); in steps until day 8, the vet asked before it starts."),
          first);
    }
  }

  @Test
  void headsAreFrozenAndFiltersCoverTheRows() throws IOException {
    SortedMap<String, byte[]> files = Outputs.of(SampleView.of(24, 12), FAMILIES);
    try (XSSFWorkbook book = book(files)) {
      for (String name : SHEETS) {
        XSSFSheet sheet = book.getSheet(name);
        assertTrue(sheet.getPaneInformation().isFreezePane(), name);
        assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition(), name);
        int last = csv(files, name).size() - 1;
        String range = sheet.getCTWorksheet().getAutoFilter().getRef();
        assertTrue(range.startsWith("A1:") && range.endsWith("" + (last + 1)), name + " " + range);
        assertTrue(
            book.getFontAt(sheet.getRow(0).getCell(0).getCellStyle().getFontIndex()).getBold());
      }
    }
  }

  @Test
  void theSameMorningGivesTheSameBytesAnywhereAndAtAnyTime() throws Exception {
    byte[] first = bytes(Outputs.of(SampleView.of(5, 3), FAMILIES));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("tr-TR", "ar-EG", "de-CH")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        Thread.sleep(1100); // a clock in the file would have moved on
        assertArrayEquals(first, bytes(Outputs.of(SampleView.of(5, 3), FAMILIES)), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(first))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        assertEquals("2026-11-24T00:00", e.getTimeLocal().toString(), e.getName());
        if (e.getName().equals("docProps/core.xml")) {
          String text = new String(zip.readAllBytes(), UTF_8);
          assertTrue(text.contains(">2026-11-24T00:00:00Z<"), text);
        }
      }
    }
  }

  private static void assertSame(SortedMap<String, byte[]> files, String about) throws IOException {
    try (XSSFWorkbook book = book(files)) {
      assertEquals(SHEETS.size() + 1, book.getNumberOfSheets(), about);
      assertEquals("calls", book.getSheetName(0), about);
      for (String name : SHEETS) {
        List<CSVRecord> records = csv(files, name);
        XSSFSheet sheet = book.getSheet(name);
        assertEquals(records.size() - 1, sheet.getLastRowNum(), about + " " + name);
        for (int i = 0; i < records.size(); i++) {
          Row row = sheet.getRow(i);
          for (int column = 0; column < records.get(i).size(); column++) {
            String head = records.get(0).get(column);
            String where = about + ", " + name + " row " + i + " " + head;
            assertSame(records.get(i).get(column), row.getCell(column), head, i > 0, where);
          }
        }
      }
    }
  }

  private static void assertSame(
      String expected, Cell cell, String head, boolean isData, String where) {
    if (expected.isEmpty()) {
      assertTrue(cell == null || cell.getCellType() == CellType.BLANK, where);
    } else if (isData && NUMBERS.contains(head)) {
      assertEquals(CellType.NUMERIC, cell.getCellType(), where);
      assertEquals(0, new BigDecimal(expected).compareTo(number(cell)), where);
    } else if (isData && head.equals("due")) {
      assertTrue(DateUtil.isCellDateFormatted(cell), where);
      assertEquals(
          LocalDate.parse(expected), cell.getLocalDateTimeCellValue().toLocalDate(), where);
    } else {
      assertEquals(CellType.STRING, cell.getCellType(), where);
      assertEquals(expected, cell.getStringCellValue(), where);
      assertNotEquals("", CsvOut.unguarded(expected), where);
    }
  }

  private static BigDecimal number(Cell cell) {
    return BigDecimal.valueOf(cell.getNumericCellValue());
  }

  private static XSSFWorkbook book(SortedMap<String, byte[]> files) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(bytes(files)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(SortedMap<String, byte[]> files) {
    return requireNonNull(files.get("summary.xlsx"));
  }

  private static List<CSVRecord> csv(SortedMap<String, byte[]> files, String sheet)
      throws IOException {
    String text = new String(requireNonNull(files.get(sheet + ".csv")), UTF_8);
    try (var parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
      return parser.getRecords();
    }
  }
}
