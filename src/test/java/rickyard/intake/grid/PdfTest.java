package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PdfTest {

  private static Grid grid(Drawing drawing) {
    return Looking.grid(Looking.open(drawing.bytes()));
  }

  private static Drawing table(Drawing drawing) {
    return drawing
        .text(60, 100, "Analyte")
        .text(60, 115, "Crude protein")
        .text(60, 130, "ADF")
        .textTo(300, 100, "As fed")
        .textTo(300, 115, "10.1")
        .textTo(420, 100, "Dry matter")
        .textTo(420, 115, "11.5")
        .textTo(420, 130, "36.2");
  }

  private static final String TABLE =
      "1: 1=Analyte | 2=As fed | 3=Dry matter\n2: 1=Crude protein | 2=10.1 | 3=11.5\n3: 1=ADF | 2=36.2";

  @Test
  void aBlankCellDrawnColumnByColumnStaysBlank() throws IOException {
    try (Drawing drawing = table(new Drawing())) {
      Grid grid = grid(drawing);
      assertEquals(TABLE, Looking.rows(grid));
      List<Row> rows = grid.pages().get(0).rows();
      Cell value = rows.get(2).cells().get(1);
      assertEquals(1.0, rows.get(0).cells().get(2).overlap(value), 1e-3);
      assertEquals(0.0, rows.get(0).cells().get(1).overlap(value));
      assertEquals(100, rows.get(0).top(), 0.01);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {90, 180, 270})
  void aTurnedPageWithTurnedTextReadsTheSame(int rotation) throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing.page.setRotation(rotation);
      drawing
          .turned(rotation, 300, 300, "ADF")
          .turned(
              rotation,
              300 + 100 * Math.cos(Math.toRadians(rotation)),
              300 + 100 * Math.sin(Math.toRadians(rotation)),
              "36.2");
      assertEquals("1: 1=ADF | 2=36.2", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void glyphByGlyphPlacementKeepsWordsWhole() throws IOException {
    try (Drawing drawing = new Drawing()) {
      String text = "Crude protein";
      double x = 60;
      for (String glyph : text.split("", -1)) {
        if (!glyph.isEmpty()) {
          drawing.text(x, 100, glyph);
          x += drawing.width(glyph);
        }
      }
      drawing.text(200, 100, "11.2");
      assertEquals("1: 1=Crude protein | 2=11.2", Looking.rows(grid(drawing)));
      assertEquals(List.of(), grid(drawing).cautions());
    }
  }

  @Test
  void invisibleTextDoesNotCount() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "NSC").text(200, 100, "9.1")) {
      drawing.draw(c -> c.setRenderingMode(RenderingMode.NEITHER)).text(300, 100, "4.1");
      assertEquals("1: 1=NSC | 2=9.1", Looking.rows(grid(drawing)));
      assertEquals(List.of("hidden-text"), grid(drawing).cautions());
    }
  }

  @Test
  void whiteOnWhiteDoesNotCountButWhiteOnDarkDoes() throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing
          .box(50, 85, 200, 20, new Color(0, 40, 80))
          .draw(c -> c.setNonStrokingColor(Color.WHITE))
          .text(60, 100, "Analyte")
          .text(60, 120, "secret")
          .draw(c -> c.setNonStrokingColor(Color.BLACK))
          .text(60, 140, "ADF");
      assertEquals("1: 1=Analyte\n2: 1=ADF", Looking.rows(grid(drawing)));
      assertEquals(List.of("hidden-text"), grid(drawing).cautions());
    }
  }

  @Test
  void aFigurePaintedOverDoesNotCountAndTheNewOneDoes() throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing
          .text(60, 100, "NSC")
          .text(200, 100, "19.1")
          .box(195, 88, 60, 16, Color.WHITE)
          .text(200, 100, "9.1");
      assertEquals("1: 1=NSC | 2=9.1", Looking.rows(grid(drawing)));
      assertEquals(List.of("hidden-text"), grid(drawing).cautions());
    }
  }

  @Test
  void textOffThePageOrTooSmallDoesNotCount() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "NSC").text(700, 100, "9.1")) {
      drawing.size = 0.4f;
      drawing.text(200, 100, "4.1");
      assertEquals("1: 1=NSC", Looking.rows(grid(drawing)));
      assertEquals(List.of("hidden-text"), grid(drawing).cautions());
    }
  }

  @Test
  void textOutsideTheCropBoxDoesNotCount() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "NSC").text(60, 700, "below")) {
      drawing.page.setCropBox(new PDRectangle(0, 400, 595, 442));
      assertEquals("1: 1=NSC", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void textThatIsClippedAwayDoesNotCount() throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing.draw(
          c -> {
            c.saveGraphicsState();
            c.addRect(50, 700, 100, 100);
            c.clip();
          });
      drawing.text(60, 100, "NSC").text(200, 100, "9.1");
      drawing.draw(c -> c.restoreGraphicsState()).text(60, 120, "ADF");
      assertEquals("1: 1=NSC\n2: 1=ADF", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void theSameTextTwiceAtOnePlaceIsOne() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "11.11").text(60.3, 100, "11.11")) {
      assertEquals("1: 1=11.11", Looking.rows(grid(drawing)));
      assertEquals(List.of("overdrawn-text"), grid(drawing).cautions());
    }
  }

  @Test
  void differentFiguresOnTopOfOneAnotherCanNotBeRead() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "12.3").text(60, 100, "14.5")) {
      String row = Looking.rows(grid(drawing));
      assertTrue(row.indexOf(CellText.UNKNOWN) > 0, row);
      assertEquals(List.of("overdrawn-text"), grid(drawing).cautions());
    }
  }

  @Test
  void aRaisedNoteIsNoDigit() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "12.3")) {
      double end = 60 + drawing.width("12.3");
      drawing.size = 6;
      drawing.text(end, 96, "1").text(60, 130, "small");
      assertEquals("1: 1=12.3¹\n2: 1=small", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void aLoweredDigitInANameIsADigit() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "NO")) {
      double end = 60 + drawing.width("NO");
      drawing.size = 6;
      drawing.text(end, 102, "3");
      double next = end + drawing.width("3");
      drawing.size = 10;
      drawing.text(next, 100, "-N").text(200, 100, "340");
      assertEquals("1: 1=NO3-N | 2=340", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void leadersDivide() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "Crude protein ............ 11.2 %")) {
      drawing.text(60, 115, "Ash......5");
      assertEquals("1: 1=Crude protein | 2=11.2 %\n2: 1=Ash......5", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void aFixedWidthFontDividesAtTwoSpaces() throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing.font = Drawing.FIXED;
      drawing.text(60, 100, "Crude protein  10.1  11.5");
      assertEquals("1: 1=Crude protein | 2=10.1 | 3=11.5", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void aRuledLineDividesNarrowColumns() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "10.1").text(81, 100, "11.5")) {
      drawing.draw(
          c -> {
            c.moveTo(80.2f, 842 - 110);
            c.lineTo(80.2f, 842 - 80);
            c.stroke();
          });
      assertEquals("1: 1=10.1 | 2=11.5", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void aWatermarkAcrossThePageStaysOutOfTheTable() throws IOException {
    try (Drawing drawing = table(new Drawing())) {
      drawing.size = 60;
      drawing.draw(c -> c.setNonStrokingColor(new Color(200, 200, 200)));
      drawing.turned(45, 150, 300, "PRELIMINARY");
      Grid grid = grid(drawing);
      assertEquals(TABLE + "\n4: 1=PRELIMINARY", Looking.rows(grid));
      assertEquals(List.of("turned-text"), grid.cautions());
    }
  }

  @Test
  void pagesKeepTheirNumbers() throws IOException {
    try (Drawing drawing =
        new Drawing().text(60, 100, "one").nextPage().nextPage().text(60, 100, "three")) {
      List<Page> pages = grid(drawing).pages();
      assertEquals(List.of(1, 3), pages.stream().map(Page::number).toList());
    }
  }

  @Test
  void aPrintedWebPageKeepsItsColumns() throws IOException {
    String page =
        """
        <html><head><style>
        table { width: 100%; border-collapse: collapse } th, td { border: 1px solid #888 }
        th { background: #003366; color: white } td.n { text-align: right }
        .secret { color: white } </style></head><body><h1>Report 12</h1>
        <table><tr><th>Analyte</th><th>As fed</th><th>Dry matter</th></tr>
        <tr><td>Crude protein, %</td><td class="n">10.1</td><td class="n">11.5</td></tr>
        <tr><td>ADF, %</td><td></td><td class="n">36.2</td></tr>
        <tr><td>NSC, %</td><td class="n secret">1.1</td><td class="n">12.0</td></tr></table>
        </body></html>
        """;
    java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
    new com.openhtmltopdf.pdfboxout.PdfRendererBuilder()
        .withHtmlContent(page, "")
        .toStream(out)
        .run();
    Grid grid = Looking.grid(Looking.open(out.toByteArray()));
    assertEquals(
        "1: 1=Report 12\n2: 1=Analyte | 2=As fed | 3=Dry matter\n3: 1=Crude protein, % | 2=10.1 | 3=11.5\n4: 1=ADF, % | 2=36.2\n5: 1=NSC, % | 2=12.0",
        Looking.rows(grid));
    assertEquals(List.of("hidden-text"), grid.cautions());
  }

  @Test
  void columnsThatStandCloseAreDividedWhereTheyWereDrawnApart() throws IOException {
    try (Drawing drawing = new Drawing()) {
      drawing.text(60, 100, "Dry matter").text(60, 115, "88.1").text(60, 130, "90.2");
      drawing.text(110, 100, "Unit").text(110, 115, "%").text(110, 130, "%");
      assertEquals(
          "1: 1=Dry matter | 2=Unit\n2: 1=88.1 | 2=%\n3: 1=90.2 | 2=%",
          Looking.rows(grid(drawing)));
    }
  }

  @Test
  void figuresThatNearlyTouchAreNotMadeOne() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "10")) {
      double next = 60 + drawing.width("10") + 0.6;
      drawing.text(60, 130, "x").text(60, 145, "y").text(next, 100, "11");
      assertEquals("1: 1=10 11\n2: 1=x\n3: 1=y", Looking.rows(grid(drawing)));
      assertEquals(List.of("readings-differ"), grid(drawing).cautions());
    }
  }

  @Test
  void aFigureThatIsCrossedOutIsNoFigure() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "Starch").text(200, 100, "1.9")) {
      drawing.draw(
          c -> {
            c.moveTo(199, 842 - 96.5f);
            c.lineTo(215, 842 - 96.5f);
            c.stroke();
            c.moveTo(50, 842 - 104);
            c.lineTo(400, 842 - 104);
            c.stroke();
          });
      assertEquals("1: 1=Starch | 2=1.9" + CellText.UNKNOWN, Looking.rows(grid(drawing)));
      assertEquals(List.of("struck-text"), grid(drawing).cautions());
    }
  }

  @Test
  void ligaturesAreLetters() {
    assertEquals("Crude fibre flow", CellText.plain("Crude \uFB01bre \uFB02ow"));
  }

  @Test
  void aFilledFormFieldCounts() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "Lot")) {
      var note = new org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationFreeText();
      note.setRectangle(new PDRectangle(200, 842 - 105, 100, 20));
      var look =
          new org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream(drawing.document);
      look.setBBox(new PDRectangle(0, 0, 100, 20));
      var fonts = new org.apache.pdfbox.pdmodel.PDResources();
      var font = fonts.add(Drawing.SANS);
      look.setResources(fonts);
      try (var out = look.getContentStream().createOutputStream()) {
        out.write(
            ("BT /" + font.getName() + " 10 Tf 2 5 Td (H-12) Tj ET")
                .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      }
      var looks = new org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary();
      looks.setNormalAppearance(look);
      note.setAppearance(looks);
      drawing.page.setAnnotations(List.of(note));
      assertEquals("1: 1=Lot | 2=H-12", Looking.rows(grid(drawing)));
    }
  }

  @Test
  void aLayerThatIsSwitchedOffDoesNotCount() throws IOException {
    try (Drawing drawing = new Drawing().text(60, 100, "NSC").text(200, 100, "9.1")) {
      var layer =
          new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup("old");
      var all =
          new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties();
      all.addGroup(layer);
      all.setGroupEnabled(layer, false);
      drawing.document.getDocumentCatalog().setOCProperties(all);
      drawing
          .draw(c -> c.beginMarkedContent(org.apache.pdfbox.cos.COSName.OC, layer))
          .text(300, 100, "4.1")
          .draw(c -> c.endMarkedContent())
          .text(60, 120, "ADF");
      assertEquals("1: 1=NSC | 2=9.1\n2: 1=ADF", Looking.rows(grid(drawing)));
      assertEquals(List.of("hidden-text"), grid(drawing).cautions());
    }
  }
}
