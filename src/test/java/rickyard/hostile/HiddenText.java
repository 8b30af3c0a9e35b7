package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.RawPdf.FONTS;
import static rickyard.hostile.RawPdf.WSC_Y;
import static rickyard.hostile.RawPdf.report;

import java.util.ArrayList;
import java.util.List;

/** PDFs that show a rich hay and carry a poor one where no eye can see it. */
final class HiddenText {
  private static final String LIE = RawPdf.text(320, WSC_Y, Paper.LIE_WSC);

  /** The lie on a line of its own with its name. */
  private static final String LINE =
      RawPdf.text(60, 400, "Water soluble carbohydrates")
          + RawPdf.text(320, 400, Paper.LIE_WSC)
          + RawPdf.text(60, 382, "Starch")
          + RawPdf.text(320, 382, Paper.LIE_STARCH);

  private final List<HostileFile> files = new ArrayList<>();
  private final Paper paper;

  private HiddenText(Paper paper) {
    this.paper = paper;
  }

  static List<HostileFile> all(Paper paper) {
    HiddenText hidden = new HiddenText(paper);
    hidden.drawn();
    hidden.beside();
    hidden.fonts();
    return hidden.files;
  }

  private void add(String name, String about, RawPdf pdf) {
    files.add(honest("pdf", name, about, pdf.bytes()));
  }

  private void page(String name, String about, String before, String after) {
    add(name, about, RawPdf.page("", FONTS, before + report(paper) + after));
  }

  private void drawn() {
    page("hidden-white.pdf", "white on white", "1 g " + LINE + "0 g ", "");
    page("hidden-mode.pdf", "drawn without ink", "3 Tr " + LINE + "0 Tr ", "");
    page("hidden-cover.pdf", "covered by white", LINE + "1 g 40 370 500 50 re f 0 g ", "");
    page("hidden-black.pdf", "covered by black", LINE + "0 g 40 370 500 50 re f 0 g ", "");
    page(
        "hidden-under.pdf",
        "the figure covered by white, another on top",
        LIE + "1 g 300 " + (WSC_Y - 4) + " 90 14 re f 0 g ",
        "");
    page("hidden-off.pdf", "beside the page", "", LINE.replace("320", "1320"));
    page(
        "hidden-above.pdf", "above the page", "", LINE.replace("400", "900").replace("382", "882"));
    page("hidden-clip.pdf", "outside the clipping", "", "q 0 0 5 5 re W n " + LINE + "Q");
    page(
        "hidden-small.pdf",
        "a thousandth of a point",
        "",
        LINE.replace("/F0 10 Tf", "/F0 0.001 Tf"));
    page("hidden-zero.pdf", "a font of size zero", "", LINE.replace("/F0 10 Tf", "/F0 0 Tf"));
    page("hidden-squeezed.pdf", "squeezed to nothing", "", "0 Tz " + LINE + "100 Tz ");
    page("overdrawn.pdf", "two figures on top of one another", "", LIE);
    page("overdrawn-first.pdf", "two figures on top of one another", LIE, "");
    page(
        "struck.pdf",
        "a figure struck through and a lower one behind it",
        "",
        "315 "
            + (WSC_Y + 3.5)
            + " m 345 "
            + (WSC_Y + 3.5)
            + " l S "
            + RawPdf.text(350, WSC_Y, Paper.LIE_WSC));
    page(
        "rotated.pdf",
        "the lie upright along the edge",
        "",
        "BT /F0 10 Tf 0 1 -1 0 590 100 Tm (Water soluble carbohydrates  3.3) Tj ET\n");
    page("mirrored.pdf", "the lie mirrored", "", "q -1 0 0 1 612 0 cm " + LINE + "Q");
  }

  private void beside() {
    String layer = "/Properties<</L 6 0 R>>";
    add(
        "hidden-layer.pdf",
        "in a layer that is off",
        RawPdf.page("", FONTS + layer, report(paper) + "/OC /L BDC " + LINE + "EMC")
            .set(1, "<</Type/Catalog/Pages 2 0 R/OCProperties<</OCGs[6 0 R]/D<</OFF[6 0 R]>>>>>>")
            .add("<</Type/OCG/Name(x)>>"));
    add(
        "hidden-alpha.pdf",
        "ink without body",
        RawPdf.page(
            "", FONTS + "/ExtGState<</G<</ca 0/CA 0>>>>", report(paper) + "q /G gs " + LINE + "Q"));
    String look = "/Type/XObject/Subtype/Form/BBox[0 0 612 792]/Resources<<" + FONTS + ">>";
    add(
        "hidden-note.pdf",
        "a note that is not shown",
        RawPdf.page("/Annots[6 0 R]", FONTS, report(paper))
            .add("<</Type/Annot/Subtype/Stamp/F 2/Rect[0 0 612 792]/AP<</N 7 0 R>>>>")
            .stream(look, LINE));
    add(
        "note-text.pdf",
        "a note whose words open on a click",
        RawPdf.page("/Annots[6 0 R]", FONTS, report(paper))
            .add("<</Type/Annot/Subtype/Text/Rect[9 9 20 20]/Contents(WSC 3.3 Starch 0.3)>>"));
    add(
        "form-value.pdf",
        "a form field whose value is not what it shows",
        RawPdf.page("/Annots[6 0 R]", FONTS, report(paper))
            .set(1, "<</Type/Catalog/Pages 2 0 R/AcroForm<</Fields[6 0 R]>>>>")
            .add(
                "<</Type/Annot/Subtype/Widget/FT/Tx/T(wsc)/V(3.3)/Rect[320 600 400 620]"
                    + "/AP<</N 7 0 R>>>>")
            .stream(
                "/Type/XObject/Subtype/Form/BBox[0 0 80 20]/Resources<<" + FONTS + ">>",
                "BT /F0 10 Tf 0 0 Td ( ) Tj ET"));
    add(
        "hidden-box.pdf",
        "a form cut to nothing",
        RawPdf.page("", FONTS + "/XObject<</X 6 0 R>>", report(paper) + "/X Do").stream(
            "/Type/XObject/Subtype/Form/BBox[0 0 0 0]/Resources<<" + FONTS + ">>", LINE));
    add(
        "crop.pdf",
        "outside the cut page",
        RawPdf.page("/CropBox[0 450 612 792]", FONTS, report(paper) + LINE));
    add(
        "actual-text.pdf",
        "another text for readers aloud",
        RawPdf.page(
            "",
            FONTS,
            report(paper).replace("(15.8) Tj", "/Span<</ActualText(3.3)>>BDC (15.8) Tj EMC")));
    add(
        "unused-page.pdf",
        "a page that no tree holds",
        RawPdf.page("", FONTS, report(paper))
            .add(
                "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 7 0 R/Resources<<"
                    + FONTS
                    + ">>>>")
            .stream("", LINE));
  }

  /** Fonts that draw one digit and say another: nothing in the text betrays them. */
  private void fonts() {
    String map =
        String.join(
            " ",
            "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
            "1 begincodespacerange <00> <FF> endcodespacerange",
            "3 beginbfchar <31> <0033> <35> <002E> <38> <0033> endbfchar endcmap end end");
    add(
        "map-other.pdf",
        "a font that names other digits than it draws",
        RawPdf.page(
            "",
            "/Font<</F0 5 0 R/F9 6 0 R>>",
            report(paper).replace("/F0 10 Tf 320.0 632.0", "/F9 10 Tf 320.0 632.0"))
            .add("<</Type/Font/Subtype/Type1/BaseFont/Helvetica/ToUnicode 7 0 R>>")
            .stream("", map));
    String nothing = map.replace("<0033>", "<0000>").replace("<002E>", "<E000>");
    add(
        "map-nothing.pdf",
        "a font that names nothing",
        RawPdf.page(
            "",
            "/Font<</F0 5 0 R/F9 6 0 R>>",
            report(paper).replace("/F0 10 Tf 320.0 632.0", "/F9 10 Tf 320.0 632.0"))
            .add("<</Type/Font/Subtype/Type1/BaseFont/Helvetica/ToUnicode 7 0 R>>")
            .stream("", nothing));
    String arabic = map.replace("<0033>", "<0663>").replace("<002E>", "<066B>");
    add(
        "map-arabic.pdf",
        "a font that names the digits of another script",
        RawPdf.page(
            "",
            "/Font<</F0 5 0 R/F9 6 0 R>>",
            report(paper).replace("/F0 10 Tf 320.0 632.0", "/F9 10 Tf 320.0 632.0"))
            .add("<</Type/Font/Subtype/Type1/BaseFont/Helvetica/ToUnicode 7 0 R>>")
            .stream("", arabic));
    add(
        "differences.pdf",
        "an encoding that renames its digits",
        RawPdf.page(
                "",
                "/Font<</F0 5 0 R/F9 6 0 R>>",
                report(paper).replace("/F0 10 Tf 320.0 632.0", "/F9 10 Tf 320.0 632.0"))
            .add(
                "<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding<</Differences[49/nowhere"
                    + " 53/g53 56/a8]>>>>"));
    add(
        "drawn-font.pdf",
        "characters without a drawing",
        RawPdf.page("", "/Font<</F0 5 0 R/F9 6 0 R>>", report(paper) + LINE.replace("/F0", "/F9"))
            .add(
                "<</Type/Font/Subtype/Type3/FontBBox[0 0 0 0]/FontMatrix[0.001 0 0 0.001 0 0]"
                    + "/CharProcs<<>>/Encoding<</Differences[32/space 46/period 48/zero 51/three]>>"
                    + "/FirstChar 32/LastChar 57/Widths["
                    + "500 ".repeat(26)
                    + "]>>"));
  }
}
