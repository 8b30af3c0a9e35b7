package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Random;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;

/** Workbooks that lie, swell, fetch or break off: each one a named outcome in bounded time. */
class WorkbookHostileInputTest {
  private static final String ONE =
      "<sheetData><row r='1'><c r='A1'><v>1</v></c></row></sheetData>";

  private static String code(byte[] bytes) {
    return assertTimeoutPreemptively(
        Duration.ofSeconds(30), () -> Looking.code(Looking.open(bytes)));
  }

  private static byte[] with(String part, String xml) {
    Map<String, byte[]> parts = Books.parts(ONE);
    parts.put(part, Books.xml(xml));
    return Books.zip(parts);
  }

  @Test
  void documentTypesAreRefusedInEveryPart() {
    String bomb = "<!DOCTYPE x [<!ENTITY a SYSTEM 'file:///etc/hostname'>]><x>&a;</x>";
    for (String part : Books.parts(ONE).keySet()) {
      assertEquals("damaged", code(with(part, bomb)), part);
    }
    assertEquals("damaged", code(with("xl/sharedStrings.xml", bomb)));
    assertEquals("damaged", code(with("xl/styles.xml", bomb)));
    Map<String, byte[]> wide = Books.parts(ONE);
    wide.put("xl/worksheets/sheet1.xml", ("\uFEFF" + bomb).getBytes(StandardCharsets.UTF_16LE));
    assertEquals("damaged", code(Books.zip(wide)));
    assertEquals(
        "damaged",
        code(Books.xml(bomb.replace("x>", "office:document office:mimetype='a.spreadsheet'>"))));
  }

  @Test
  void aSheetThatUnpacksWithoutEndIsRefused() {
    Map<String, byte[]> parts = Books.parts(ONE);
    byte[] head = parts.get("xl/worksheets/sheet1.xml");
    // Blanks behind the end of the sheet are still the sheet.
    byte[] swollen = java.util.Arrays.copyOf(head, 140 << 20);
    java.util.Arrays.fill(swollen, head.length, swollen.length, (byte) ' ');
    parts.put("xl/worksheets/sheet1.xml", swollen);
    assertEquals("too-large-unpacked", code(Books.zip(parts)));
  }

  @Test
  void sharedTextsWithoutEndAreRefused() {
    String many =
        "<sst xmlns='http://schemas.openxmlformats.org/spreadsheetml/2006/main'>"
            + "<si><t>a</t></si>".repeat(1_000_001)
            + "</sst>";
    assertEquals("too-large-unpacked", code(with("xl/sharedStrings.xml", many)));
    String large = "<sst><si><t>" + "a".repeat(20 << 20) + "</t></si></sst>";
    assertEquals("too-large-unpacked", code(with("xl/sharedStrings.xml", large)));
  }

  @Test
  void aMillionEmptyStyledRowsCostNothing() {
    StringBuilder sheet = new StringBuilder("<sheetData><row r='1'><c r='A1'><v>1</v></c></row>");
    for (int row = 2; row <= 1_000_000; row++) {
      sheet
          .append("<row r='")
          .append(row)
          .append("' s='3'><c r='A")
          .append(row)
          .append("' s='3'/></row>");
    }
    sheet.append("</sheetData>");
    byte[] book = Books.zip(Books.parts(sheet.toString()));
    Grid grid = assertTimeoutPreemptively(Duration.ofMinutes(5), () -> Looking.grid(book));
    assertEquals(1, grid.pages().get(0).rows().size());
  }

  @Test
  void tooManyFilledCellsAreTooMany() {
    StringBuilder sheet = new StringBuilder("<sheetData>");
    for (int row = 1; row <= 100_001; row++) {
      sheet.append("<row r='").append(row).append("'>");
      for (char c = 'A'; c < 'K'; c++) {
        sheet.append("<c r='").append(c).append(row).append("'><v>1</v></c>");
      }
      sheet.append("</row>");
    }
    assertEquals(
        "too-many-cells", code(Books.zip(Books.parts(sheet.append("</sheetData>").toString()))));
  }

  @Test
  void repeatedCellsOfAnOpenDocumentAreCounted() {
    String cell =
        "<table:table table:name='x'><table:table-row table:number-rows-repeated='1000000'>"
            + "<table:table-cell table:number-columns-repeated='16000'><text:p>x</text:p>"
            + "</table:table-cell></table:table-row></table:table>";
    assertEquals("too-many-cells", code(Books.ods(cell)));
    assertEquals("too-many-cells", code(Books.ods(cell.replace("1000000", "2147483647"))));
  }

  @Test
  void mergedCellsWithoutEndCountAsCells() {
    String merges = "<mergeCell ref='A1:XFD1048576'/>".repeat(1_000_001);
    assertEquals(
        "too-many-cells",
        code(Books.zip(Books.parts(ONE + "<mergeCells>" + merges + "</mergeCells>"))));
  }

  @Test
  void numbersBeyondAllMeasureAreNeitherWrittenOutNorTaken() {
    for (String number : java.util.List.of("1E+2000000000", "1E-2000000000", "-9E+2147483646")) {
      byte[] book = Books.zip(Books.parts(ONE.replace("<v>1<", "<v>" + number + "<")));
      Cell cell =
          assertTimeoutPreemptively(
              Duration.ofSeconds(30),
              () -> Looking.grid(book).pages().get(0).rows().get(0).cells().get(0));
      assertEquals(Cell.Nature.RESHAPED, cell.nature());
      assertEquals(number, cell.text());
    }
    assertEquals(
        "damaged",
        code(Books.zip(Books.parts(ONE.replace("<v>1<", "<v>" + "1".repeat(1 << 20) + "<")))));
  }

  @Test
  void theSamePartTwiceIsDamaged() {
    byte[] zip = with("xl/worksheets/sheet2.xml", "<x/>");
    byte[] twice =
        new String(zip, StandardCharsets.ISO_8859_1)
            .replace("sheet2.xml", "sheet1.xml")
            .getBytes(StandardCharsets.ISO_8859_1);
    assertEquals("damaged", code(twice));
  }

  @Test
  void anXlsbAndOtherBoxesAreNamed() {
    byte[] binary =
        Books.zip(Map.of("[Content_Types].xml", Books.xml("<x/>"), "xl/workbook.bin", new byte[9]));
    assertTrue(Looking.reason(Looking.open(binary)).contains(".xlsb"));
    assertTrue(Looking.reason(Looking.open(box("__properties_version1.0"))).contains(".msg"));
    assertEquals("encrypted", code(box("EncryptedPackage")));
    assertEquals("unsupported-kind", code(box("WordDocument")));
    assertEquals("unsupported-kind", code(box("Book")));
    assertEquals(
        "unsupported-kind",
        code(Books.xml("<?mso-application progid=\"Excel.Sheet\"?><Workbook/>")));
  }

  private static byte[] box(String stream) {
    try (POIFSFileSystem box = new POIFSFileSystem()) {
      box.createDocument(new java.io.ByteArrayInputStream(new byte[5000]), stream);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      box.writeFilesystem(out);
      return out.toByteArray();
    } catch (java.io.IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }

  @Test
  void anOldWorkbookUnderAPasswordIsEncrypted() {
    Biff8EncryptionKey.setCurrentUserPassword("hay");
    byte[] locked;
    try {
      locked = Books.xls(b -> b.createSheet("One").createRow(0).createCell(0).setCellValue("x"));
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    assertEquals("encrypted", code(locked));
  }

  @Test
  void damageNeverChangesAFigureOfAPackedWorkbook() {
    byte[] whole = Books.zip(Books.parts(ONE.replace("<v>1<", "<v>7.456<")));
    Random random = new Random(20260306);
    for (int round = 0; round < 400; round++) {
      byte[] changed = whole.clone();
      changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
      Looking.open(changed)
          .fold(
              cells -> {
                assertEquals(
                    "7.456", cells.grid().pages().get(0).rows().get(0).cells().get(0).text());
                return "";
              },
              parts -> "",
              bad -> bad.code());
    }
  }

  @Test
  void aTornOldWorkbookIsAnOutcome() {
    byte[] whole =
        Books.xls(
            b -> {
              var sheet = b.createSheet("One");
              for (int row = 0; row < 50; row++) {
                sheet.createRow(row).createCell(0).setCellValue(row + 0.5);
              }
            });
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      byte[] changed = java.util.Arrays.copyOf(whole, 1 + random.nextInt(whole.length));
      changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
      assertTrue(Looking.open(changed) != null);
    }
  }
}
