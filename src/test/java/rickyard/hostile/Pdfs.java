package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;
import static rickyard.hostile.HostileFile.refused;
import static rickyard.hostile.RawPdf.FONTS;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/** PDFs whose structure is broken, endless or far too large. */
final class Pdfs {
  private Pdfs() {}

  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(loops(paper));
    files.addAll(large(paper));
    files.addAll(broken(paper));
    files.addAll(active(paper));
    return files;
  }

  static RawPdf good(Paper paper) {
    return RawPdf.page("", FONTS, RawPdf.report(paper));
  }

  private static List<HostileFile> loops(Paper paper) {
    String content = RawPdf.report(paper);
    RawPdf selfForm =
        RawPdf.page("", FONTS + "/XObject<</X 6 0 R>>", content + "/X Do\n").stream(
            "/Type/XObject/Subtype/Form/BBox[0 0 612 792]/Resources<<"
                + FONTS
                + "/XObject<</X 6 0 R>>>>",
            "/X Do /X Do");
    RawPdf fan = RawPdf.page("", FONTS + "/XObject<</X 6 0 R>>", content + "/X Do\n");
    for (int level = 0; level < 12; level++) {
      int inner = fan.next() + 1;
      String names = level == 11 ? "" : "/XObject<</X " + inner + " 0 R>>";
      String calls = level == 11 ? RawPdf.text(60, 60, "deep") : "/X Do ".repeat(10);
      fan.stream(
          "/Type/XObject/Subtype/Form/BBox[0 0 612 792]/Resources<<" + FONTS + names + ">>", calls);
    }
    RawPdf deepQ = RawPdf.page("", FONTS, "q ".repeat(200_000) + content);
    return List.of(
        honest(
            "pdf",
            "tree-loop.pdf",
            "a page tree that holds itself",
            good(paper).set(2, "<</Type/Pages/Kids[3 0 R 2 0 R]/Count 2>>").bytes()),
        honest(
            "pdf",
            "parent-loop.pdf",
            "a page that is its own parent",
            good(paper).set(2, "<</Type/Pages/Parent 2 0 R/Kids[3 0 R]/Count 1>>").bytes()),
        honest(
            "pdf",
            "many-pages.pdf",
            "a tree that counts two thousand million pages",
            good(paper).set(2, "<</Type/Pages/Kids[3 0 R]/Count 2000000000>>").bytes()),
        notTaken(
            "pdf",
            "same-page.pdf",
            "one page 5,000 times",
            good(paper)
                .set(2, "<</Type/Pages/Count 5000/Kids[" + "3 0 R ".repeat(5000) + "]>>")
                .bytes()),
        honest(
            "pdf",
            "xref-loop.pdf",
            "a cross-reference table before itself",
            good(paper).bytes("/Prev 15")),
        honest("pdf", "xref-prev-self.pdf", "an earlier table that is this one", prevSelf(paper)),
        honest(
            "pdf",
            "reference-loop.pdf",
            "a content that refers to itself",
            good(paper).set(4, "4 0 R").bytes()),
        honest(
            "pdf",
            "length-loop.pdf",
            "a stream whose length is the stream",
            good(paper).set(4, "<</Length 4 0 R>>stream\n" + content + "\nendstream").bytes()),
        honest("pdf", "form-loop.pdf", "a form that draws itself", selfForm.bytes()),
        notTaken("pdf", "form-fan.pdf", "ten forms of ten forms, twelve deep", fan.bytes()),
        honest("pdf", "states.pdf", "200,000 saved states", deepQ.bytes()),
        honest(
            "pdf",
            "arrays.pdf",
            "50,000 arrays in one another",
            RawPdf.page("/X " + "[".repeat(50_000) + "]".repeat(50_000), FONTS, content).bytes()),
        honest(
            "pdf",
            "dictionaries.pdf",
            "50,000 dictionaries in one another",
            RawPdf.page("/X " + "<</X ".repeat(50_000) + "1" + ">>".repeat(50_000), FONTS, content)
                .bytes()),
        honest(
            "pdf",
            "object-stream-loop.pdf",
            "an object stream that extends itself",
            good(paper).stream("/Type/ObjStm/N 2/First 10/Extends 6 0 R", "7 0 8 3 1  2  ")
                .bytes()));
  }

  private static byte[] prevSelf(Paper paper) {
    byte[] plain = good(paper).bytes("/Prev 0000000");
    String text = new String(plain, java.nio.charset.StandardCharsets.ISO_8859_1);
    int table = text.indexOf("\nxref\n") + 1;
    return text.replace("/Prev 0000000", String.format(java.util.Locale.ROOT, "/Prev %07d", table))
        .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
  }

  private static List<HostileFile> large(Paper paper) {
    String content = RawPdf.report(paper);
    RawPdf fonts = fonts(2000, content);
    StringBuilder glyphs = new StringBuilder();
    for (int line = 0; line < 12_000; line++) {
      glyphs.append(RawPdf.text(10, 780 - line % 700, "8".repeat(100)));
    }
    return List.of(
        honest("pdf", "fonts.pdf", "2,000 fonts", fonts.bytes()),
        notTaken(
            "pdf",
            "glyphs.pdf",
            "1.2 million characters on one page",
            RawPdf.page("", FONTS, glyphs.toString()).bytes()),
        notTaken(
            "pdf",
            "shapes.pdf",
            "300,000 shapes",
            RawPdf.page("", FONTS, content + "1 1 5 5 re f\n".repeat(300_000)).bytes()),
        honest(
            "pdf",
            "media-box.pdf",
            "a page of 1e30 points",
            good(paper)
                .set(
                    3,
                    "<</Type/Page/Parent 2 0 R/MediaBox[0 0 1e30 1e30]/Contents 4 0 R"
                        + "/Resources<<"
                        + FONTS
                        + ">>>>")
                .bytes()),
        honest(
            "pdf",
            "media-box-nan.pdf",
            "a page without a size",
            good(paper)
                .set(
                    3,
                    "<</Type/Page/Parent 2 0 R/MediaBox[9 9 9 9]/Contents 4 0 R"
                        + "/Resources<<"
                        + FONTS
                        + ">>>>")
                .bytes()),
        honest(
            "pdf",
            "user-unit.pdf",
            "a unit of 1e9",
            RawPdf.page("/UserUnit 1e9", FONTS, content).bytes()),
        honest(
            "pdf",
            "matrix.pdf",
            "a matrix that flattens everything",
            RawPdf.page("", FONTS, "0 0 0 0 0 0 cm " + content).bytes()),
        honest(
            "pdf",
            "dashes.pdf",
            "a line with endless dashes",
            RawPdf.page("", FONTS, content + "[0 0] 0 d 1e9 w 0 0 m 1e9 1e9 l S").bytes()));
  }

  private static RawPdf fonts(int count, String content) {
    StringBuilder names = new StringBuilder("/Font<</F0 5 0 R");
    StringBuilder drawn = new StringBuilder(content);
    for (int at = 0; at < count; at++) {
      names.append("/G" + at + " " + (6 + at) + " 0 R");
      drawn.append("BT /G" + at + " 1.2 Tf " + (20 + at % 500) + " 20 Td (.) Tj ET\n");
    }
    RawPdf pdf = RawPdf.page("", names + ">>", drawn.toString());
    for (int at = 0; at < count; at++) {
      pdf.add("<</Type/Font/Subtype/TrueType/BaseFont/Nowhere" + at + ">>");
    }
    return pdf;
  }

  private static List<HostileFile> broken(Paper paper) {
    byte[] whole = good(paper).bytes();
    String text = new String(whole, java.nio.charset.StandardCharsets.ISO_8859_1);
    byte[] noTable =
        text.substring(0, text.indexOf("\nxref\n"))
            .concat("\n%%EOF\n")
            .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    return List.of(
        refused("pdf", "locked.pdf", "asks for a password", locked(whole, "secret"), "encrypted"),
        honest("pdf", "owner-locked.pdf", "locked for changes only", locked(whole, "")),
        refused(
            "pdf", "cut.pdf", "breaks off", Arrays.copyOf(whole, whole.length * 2 / 3), "damaged"),
        honest("pdf", "no-xref.pdf", "no cross-reference table", noTable),
        honest(
            "pdf",
            "wrong-startxref.pdf",
            "a table that is not where it should be",
            text.replaceAll("startxref\n\\d+", "startxref\n99999999")
                .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)),
        notTaken("pdf", "head-only.pdf", "a head and nothing else", ascii("%PDF-1.7\n%%EOF\n")),
        notTaken(
            "pdf",
            "no-pages.pdf",
            "no page",
            new RawPdf()
                .add("<</Type/Catalog/Pages 2 0 R>>")
                .add("<</Type/Pages/Count 0>>")
                .bytes()),
        notTaken(
            "pdf",
            "no-catalogue.pdf",
            "no catalogue",
            new RawPdf().add("<</Type/Nothing>>").bytes()),
        honest(
            "pdf",
            "negative-length.pdf",
            "a stream of length below nothing",
            good(paper)
                .set(4, "<</Length -5>>stream\n" + RawPdf.report(paper) + "\nendstream")
                .bytes()),
        honest(
            "pdf",
            "rotate.pdf",
            "turned by 45 degrees, which is no turn",
            RawPdf.page("/Rotate 45", FONTS, RawPdf.report(paper)).bytes()),
        honest(
            "pdf",
            "damaged-content.pdf",
            "operators without operands",
            RawPdf.page(
                    "", FONTS, "Tj TJ Td cm re l c Do gs Tf BT ET ET Q Q " + RawPdf.report(paper))
                .bytes()));
  }

  private static byte[] locked(byte[] pdf, String password) {
    try (PDDocument document = Loader.loadPDF(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      var policy = new StandardProtectionPolicy("owner", password, new AccessPermission());
      policy.setEncryptionKeyLength(128);
      document.protect(policy);
      document.save(out);
      return out.toByteArray();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
  }

  private static List<HostileFile> active(Paper paper) {
    String trap = "touch /tmp/rickyard-escape-launch";
    return List.of(
        honest(
            "pdf",
            "javascript.pdf",
            "a script to run on opening",
            good(paper)
                .set(
                    1,
                    "<</Type/Catalog/Pages 2 0 R/OpenAction<</S/JavaScript/JS(app.alert"
                        + "\\(1\\))>>>>")
                .bytes()),
        honest(
            "pdf",
            "launch.pdf",
            "a program to start on opening",
            good(paper)
                .set(
                    1,
                    "<</Type/Catalog/Pages 2 0 R/OpenAction<</S/Launch/F(/bin/sh)"
                        + "/Win<</F(sh)/P("
                        + trap
                        + ")>>>>>>")
                .bytes()),
        honest(
            "pdf",
            "fetch.pdf",
            "an address to fetch and a file to import",
            good(paper)
                .set(
                    1,
                    "<</Type/Catalog/Pages 2 0 R/OpenAction<</S/URI/URI(http://127.0.0.1"
                        + ":9/x)>>/AA<</WC<</S/ImportData/F(/etc/passwd)>>>>>>")
                .bytes()),
        honest(
            "pdf",
            "xfa.pdf",
            "a form in XML with an outside entity",
            good(paper)
                .set(1, "<</Type/Catalog/Pages 2 0 R/AcroForm<</Fields[]/XFA 6 0 R>>>>")
                .stream("", "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>")
                .bytes()),
        honest(
            "pdf",
            "metadata.pdf",
            "metadata with an outside entity",
            good(paper).set(1, "<</Type/Catalog/Pages 2 0 R/Metadata 6 0 R>>").stream(
                    "/Type/Metadata/Subtype/XML",
                    "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>")
                .bytes()),
        honest(
            "pdf",
            "attached.pdf",
            "a lower report attached inside",
            good(paper)
                .set(
                    1,
                    "<</Type/Catalog/Pages 2 0 R/Names<</EmbeddedFiles<</Names[(a.csv) "
                        + "6 0 R]>>>>>>")
                .add("<</Type/Filespec/F(a.csv)/EF<</F 7 0 R>>>>")
                .stream("/Type/EmbeddedFile", paper.csv(Paper.LIE_WSC, Paper.LIE_STARCH))
                .bytes()));
  }
}
