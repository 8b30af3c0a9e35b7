package rickyard.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A PDF put together object by object, so that any of them can be wrong. */
final class RawPdf {
  static final String FONTS = "/Font<</F0 5 0 R>>";

  private final List<byte[]> objects = new ArrayList<>();

  /** A document of one page: catalogue 1, pages 2, page 3, content 4, font 5. */
  static RawPdf page(String pageEntries, String resources, String content) {
    return new RawPdf()
            .add("<</Type/Catalog/Pages 2 0 R>>")
            .add("<</Type/Pages/Kids[3 0 R]/Count 1>>")
            .add(
                "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R/Resources<<"
                    + resources
                    + ">>"
                    + pageEntries
                    + ">>")
            .stream("", content)
            .add("<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>");
  }

  RawPdf add(String object) {
    objects.add(latin(object));
    return this;
  }

  RawPdf stream(String entries, String body) {
    return stream(entries, latin(body));
  }

  RawPdf stream(String entries, byte[] body) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(latin("<<" + entries + "/Length " + body.length + ">>stream\n"));
    out.writeBytes(body);
    out.writeBytes(latin("\nendstream"));
    objects.add(out.toByteArray());
    return this;
  }

  /** Replaces an object, counted from 1. */
  RawPdf set(int number, String object) {
    objects.set(number - 1, latin(object));
    return this;
  }

  int next() {
    return objects.size() + 1;
  }

  byte[] bytes() {
    return bytes("");
  }

  byte[] bytes(String trailer) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(latin("%PDF-1.7\n"));
    List<Integer> places = new ArrayList<>();
    for (int at = 0; at < objects.size(); at++) {
      places.add(out.size());
      out.writeBytes(latin((at + 1) + " 0 obj\n"));
      out.writeBytes(objects.get(at));
      out.writeBytes(latin("\nendobj\n"));
    }
    int table = out.size();
    StringBuilder end = new StringBuilder("xref\n0 " + (objects.size() + 1) + "\n");
    end.append("0000000000 65535 f \n");
    places.forEach(p -> end.append(String.format(Locale.ROOT, "%010d 00000 n \n", p)));
    end.append("trailer\n<</Size " + (objects.size() + 1) + "/Root 1 0 R" + trailer + ">>\n");
    end.append("startxref\n" + table + "\n%%EOF\n");
    out.writeBytes(latin(end.toString()));
    return out.toByteArray();
  }

  /** The content of an honest page. */
  static String report(Paper paper) {
    StringBuilder out = new StringBuilder();
    double y = 740;
    for (List<String> line : paper.lines()) {
      out.append(text(60, y, line.get(0))).append(text(320, y, line.get(1)));
      y -= 18;
    }
    return out.toString();
  }

  /** Where the figure of sugars stands on {@link #report}. */
  static final double WSC_Y = 740 - 6 * 18;

  static String text(double x, double y, String text) {
    return String.format(Locale.ROOT, "BT /F0 10 Tf %.1f %.1f Td (%s) Tj ET\n", x, y, text);
  }

  private static byte[] latin(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
