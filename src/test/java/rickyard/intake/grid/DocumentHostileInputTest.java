package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;

class DocumentHostileInputTest {

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] report() {
    try (Drawing drawing = new Drawing()) {
      for (int row = 0; row < 20; row++) {
        drawing.text(60, 100 + 15 * row, "Analyte " + row).text(300, 100 + 15 * row, "10." + row);
      }
      return drawing.bytes();
    } catch (IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }

  @Test
  void nothingIsEmpty() {
    assertEquals("empty", Looking.code(Looking.open(new byte[0])));
    assertEquals("empty", Looking.code(Looking.open(" \n\t \n")));
    assertEquals("empty", Looking.code(Looking.open(",,,\n,,\n")));
    assertEquals("empty", Looking.code(Looking.open("\uFEFF")));
  }

  @Test
  void zeroBytesInATextMakeItNoText() {
    assertEquals("binary", Looking.code(Looking.open("a,b\nc\0,d\ne,f\n")));
  }

  @Test
  void binaryJunkIsNamed() {
    byte[] junk = new byte[5000];
    new Random(7).nextBytes(junk);
    String code = Looking.code(new DocumentReader().open(junk, "report.csv"));
    assertTrue(List.of("binary", "unsupported-kind").contains(code), code);
  }

  @Test
  void blankCellsCountToo() {
    String blanks = ",,,,,,,,,\n".repeat(ReadLimits.DEFAULT.tableCells() / 10);

    assertEquals("too-many-cells", Looking.code(Looking.open("Lot,WSC\n" + blanks)));
  }

  @Test
  void aDelimitedTextMayHaveMoreCellsThanOtherKinds() {
    ReadLimits tight = new ReadLimits(1 << 20, 1, 4, 8, 100, 50, 10_000, 1 << 20, 2, 1);
    GridReader reader = new DocumentReader(tight);

    assertEquals(
        4,
        Looking.grid(reader.open(utf8("Lot;WSC\nA;5.1\nB;6.2\nC;7.3\n"), "x"))
            .pages()
            .get(0)
            .rows()
            .size());
    assertEquals(
        "too-many-cells",
        Looking.code(reader.open(utf8("Lot;WSC\nA;5.1\nB;6.2\nC;7.3\nD;8.4\n"), "x")));
    assertEquals(
        "too-many-cells",
        Looking.code(
            reader.open(
                utf8(
                    "<html><body><table><tr><td>Lot<td>WSC<tr><td>A<td>5.1<tr><td>B<td>6.2"
                        + "</table></body></html>"),
                "x")));
  }

  @Test
  void aLineOfAMillionColumnsIsTooMany() {
    assertEquals("too-many-cells", Looking.code(Looking.open("1;".repeat(1_000_000))));
    assertEquals("too-many-cells", Looking.code(Looking.open(",".repeat(1_000_000) + "1")));
  }

  /** Few cells, but each row is crossed by those of all rows above it. */
  @Test
  void cellsOfAWebPageThatReachDownCountInEveryRow() {
    String row = "<tr><td colspan=1000 rowspan=1000>0.3</td></tr>";

    assertEquals(
        "too-many-cells",
        Looking.code(Looking.open("<html><table>" + row.repeat(200) + "</table></html>")));
  }

  @Test
  void aCellWithoutEndIsTooLong() {
    assertEquals("cell-too-long", Looking.code(Looking.open("a,b\nc," + "x".repeat(40_000))));
    assertEquals("cell-too-long", Looking.code(Looking.open("x".repeat(40_000))));
  }

  @Test
  void aTextThatBreaksItsOwnEncodingIsDamaged() {
    byte[] bytes = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'a', ',', (byte) 0xFC, '\n'};
    assertEquals("damaged", Looking.code(Looking.open(bytes)));
  }

  @Test
  void limitsAreReachedWithACodeAndNeverCut() {
    ReadLimits tight = new ReadLimits(1 << 20, 1, 4, 100, 50, 10_000, 1 << 20, 2, 1);
    GridReader reader = new DocumentReader(tight);
    assertEquals("too-many-cells", Looking.code(reader.open(utf8("1;2\n3;4\n5;6\n"), "x")));
    assertEquals("too-large", Looking.code(reader.open(new byte[(1 << 20) + 1], "x")));
    assertEquals("too-long", Looking.code(reader.open(report(), "x")));
    byte[] three = ContainerTest.zip("1", utf8("a"), "2", utf8("b"), "3", utf8("c"));
    assertEquals("too-many-parts", Looking.code(reader.open(three, "x")));
  }

  @Test
  void aZipBombIsRefusedBeforeItIsUnpacked() {
    byte[] bomb = ContainerTest.zip("zeros.csv", new byte[64 << 20]);
    assertTrue(bomb.length < 1 << 17);
    assertEquals("too-large-unpacked", Looking.code(Looking.open(bomb)));
  }

  @Test
  void aDamagedZipIsDamaged() {
    byte[] zip = ContainerTest.zip("a.csv", utf8("a,b\nc,d\n".repeat(50)));
    assertEquals("damaged", Looking.code(Looking.open(Arrays.copyOf(zip, zip.length / 2))));
    byte[] changed = zip.clone();
    changed[40] ^= 0x10;
    assertEquals("damaged", Looking.code(Looking.open(changed)));
  }

  @Test
  void aWorkbookOfEmptyPartsIsDamaged() {
    byte[] workbook =
        ContainerTest.zip("[Content_Types].xml", utf8("<x/>"), "xl/workbook.xml", utf8("<x/>"));
    Opened opened = Looking.open(workbook);
    assertEquals("damaged", Looking.code(opened));
    assertEquals("workbook", opened.kind());
  }

  @Test
  void picturesAndOtherKindsAreNamed() {
    byte[] png = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'};
    assertEquals("no-text", Looking.code(Looking.open(png)));
    assertEquals("unsupported-kind", Looking.code(Looking.open("{\\rtf1 ADF 36.2}")));
    assertEquals("unsupported-kind", Looking.code(Looking.open("<?xml version=\"1.0\"?><a>1</a>")));
    assertEquals("unsupported-kind", Looking.code(Looking.open("Rar!\u001A\u0007\0 abc")));
  }

  @Test
  void aTruncatedPdfIsDamaged() {
    byte[] whole = report();
    for (int part = 1; part < 10; part++) {
      byte[] cut = Arrays.copyOf(whole, whole.length * part / 10);
      assertEquals("damaged", Looking.code(Looking.open(cut)));
    }
  }

  @Test
  void aLockedPdfIsEncrypted() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "ADF")) {
      StandardProtectionPolicy lock =
          new StandardProtectionPolicy("owner", "user", new AccessPermission());
      lock.setEncryptionKeyLength(128);
      drawing.document.protect(lock);
      assertEquals("encrypted", Looking.code(Looking.open(drawing.bytes())));
    }
  }

  @Test
  void aPdfWithoutTextHasNoText() throws IOException {
    try (Drawing drawing = new Drawing().box(10, 10, 500, 500, java.awt.Color.GRAY)) {
      Opened opened = Looking.open(drawing.bytes());
      assertEquals("no-text", Looking.code(opened));
      assertEquals("pdf", opened.kind());
    }
  }

  @Test
  void aPdfOfTooManyPagesIsRefused() throws IOException {
    try (Drawing drawing = new Drawing()) {
      for (int page = 0; page < 1_201; page++) {
        drawing.document.addPage(new PDPage());
      }
      assertEquals("too-many-pages", Looking.code(Looking.open(drawing.bytes())));
    }
  }

  @Test
  void aDeeplyNestedPageIsSurvived() {
    String html = "<html>" + "<div>".repeat(20_000) + "<table><tr><td>1</table>";
    String code =
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Looking.code(Looking.open(html)));
    assertTrue(code.equals("too-deep") || code.equals("damaged") || code.startsWith("cells"), code);
  }

  /** Whatever single bytes change in a packed PDF: a reason, or exactly the figures it had. */
  @Test
  void damageToAPackedPdfNeverChangesAFigure() {
    byte[] whole = report();
    String figures = Looking.rows(Looking.grid(Looking.open(whole)));
    long seed = 20261103;
    Random random = new Random(seed);
    int refused = 0;
    for (int round = 0; round < 300; round++) {
      byte[] changed = whole.clone();
      int at = random.nextInt(changed.length);
      changed[at] ^= (byte) (1 << random.nextInt(8));
      Opened opened = new DocumentReader().open(changed, "x.pdf");
      String now = opened.fold(c -> Looking.rows(c.grid()), p -> "parts", u -> "refused");
      refused += now.equals("refused") ? 1 : 0;
      if (opened instanceof Opened.Cells && opened.kind().equals("pdf")) {
        assertFalse(
            !figures.equals(now) && sameLabels(figures, now),
            "seed " + seed + ", round " + round + ", byte " + at + ":\n" + now);
      }
    }
    assertTrue(refused > 100, "refused " + refused);
  }

  /** Rows that still read like the report but with other figures would be believed. */
  private static boolean sameLabels(String figures, String now) {
    List<String> rows = List.of(figures.split("\n", -1));
    return now.lines()
        .anyMatch(
            row ->
                !rows.contains(row)
                    && rows.stream()
                        .anyMatch(r -> r.split("\\| 2=", -1)[0].equals(row.split("\\| 2=", -1)[0]))
                    && row.matches(".*\\| 2=[0-9.]+"));
  }

  @Test
  void resultsSurviveTheWayThroughAnotherProcess() throws Exception {
    for (Opened opened :
        List.of(
            Looking.open(report()),
            Looking.open("a,b\nc,d\n"),
            Looking.open(ContainerTest.zip("a", utf8("b"))),
            Looking.open(""))) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(opened);
      }
      try (ObjectInputStream in =
          new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(opened, in.readObject());
      }
    }
  }

  @Test
  void whateverIsDamagedThereIsAResult() {
    byte[] mail =
        utf8(
            """
            From: a@example.org
            Date: Mon, 2 Nov 2026 08:00:00 +0000
            MIME-Version: 1.0
            Content-Type: multipart/mixed; boundary=b

            --b

            ADF 36.2
            --b
            Content-Type: text/csv; charset=utf-16; name="x.csv"

            a;b
            --b--
            """);
    List<byte[]> wholes =
        List.of(
            report(),
            mail,
            ContainerTest.zip("a.csv", utf8("a,b\nc,d\n"), "b.pdf", report()),
            utf8("<html><table><tr><td colspan=3>a</td><td>b</td></tr></table></html>"),
            utf8("Lot;\"DM\";ADF\nH1;88,1;\"36,2\"\n"));
    Random random = new Random(4711);
    for (int round = 0; round < 500; round++) {
      byte[] changed = wholes.get(round % wholes.size()).clone();
      for (int change = 0; change <= random.nextInt(20); change++) {
        changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
      }
      byte[] cut = Arrays.copyOf(changed, 1 + random.nextInt(changed.length));
      for (byte[] each : List.of(changed, cut)) {
        List<Unfolding.Leaf> leaves =
            Unfolding.of(new DocumentReader(), each, "x", ReadLimits.DEFAULT);
        assertFalse(leaves.isEmpty());
      }
    }
  }
}
