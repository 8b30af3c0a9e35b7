package rickyard.intake.grid.pdf;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** A PDF written by hand from the fuzzer's data: no 7 can be seen in it, hidden text is all 7s. */
final class RandomPdf {
  private static final List<String> LABELS =
      List.of(
          "Dry matter",
          "Moisture",
          "Crude protein",
          "WSC",
          "ESC",
          "Starch",
          "NSC",
          "ADF",
          "Calcium",
          "% DM",
          "As fed",
          "Dry basis",
          "g/kg",
          "Lot: A",
          "Report no.: R",
          "Unit",
          "Result");
  static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,][0-9]+)*");
  private static final double PITCH = 24;
  private static final double COLUMN = 110;

  private final FuzzedDataProvider data;
  private final StringBuilder content = new StringBuilder();
  private final Set<String> drawn = new TreeSet<>();
  private int rows;

  RandomPdf(FuzzedDataProvider data) {
    this.data = data;
  }

  /** Every number that a reader of the page can see. */
  Set<String> drawn() {
    return drawn;
  }

  byte[] pdf() {
    int turn = 90 * data.consumeInt(0, 3);
    double unit = data.consumeBoolean() ? 1 : data.consumeInt(1, 4);
    int lines = data.consumeInt(1, 20);
    while (rows < lines && data.remainingBytes() > 0) {
      row();
      rows++;
    }
    List<String> objects = new ArrayList<>();
    objects.add("<</Type/Catalog/Pages 2 0 R/OCProperties<</OCGs[6 0 R]/D<</OFF[6 0 R]>>>>>>");
    objects.add("<</Type/Pages/Kids[3 0 R]/Count 1>>");
    objects.add(
        "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Rotate "
            + turn
            + "/UserUnit "
            + unit
            + "/Contents 4 0 R/Resources<</Font<</F0 5 0 R/F1 8 0 R>>/Properties<</L0 6 0 R>>"
            + "/ExtGState<</G0<</ca 0/CA 0>>>>/XObject<</X0 7 0 R>>>>/Annots[9 0 R 10 0 R]>>");
    objects.add(stream("", content.toString()));
    objects.add("<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>");
    objects.add("<</Type/OCG/Name(off)>>");
    objects.add(
        stream(
            "/Type/XObject/Subtype/Form/BBox[0 0 0 0]/Resources<</Font<</F0 5 0 R>>>>",
            "BT /F0 9 Tf 50 50 Td (77.7) Tj ET"));
    objects.add("<</Type/Font/Subtype/Type1/BaseFont/Courier>>");
    String look = "/AP<</N 11 0 R>>";
    objects.add("<</Type/Annot/Subtype/Square/F 2/Rect[50 50 150 70]" + look + ">>");
    objects.add("<</Type/Annot/Subtype/Popup/Rect[50 90 150 110]/Contents(77)>>");
    objects.add(
        stream(
            "/Type/XObject/Subtype/Form/BBox[0 0 100 20]/Resources<</Font<</F0 5 0 R>>>>",
            "BT /F0 9 Tf 5 5 Td (77) Tj ET"));
    return written(objects);
  }

  private static String stream(String entries, String body) {
    return "<<" + entries + "/Length " + body.length() + ">>stream\n" + body + "\nendstream";
  }

  private void row() {
    double y = 740 - PITCH * rows;
    int columns = data.consumeInt(1, 5);
    for (int column = 0; column < columns; column++) {
      double x = 40 + COLUMN * column;
      if (data.consumeBoolean()) {
        visible(x, y);
      } else {
        hidden(x, y);
      }
    }
  }

  private void visible(double x, double y) {
    String text = data.consumeInt(0, 2) == 0 ? data.pickValue(LABELS) : number();
    NUMBER.matcher(text).results().forEach(n -> drawn.add(n.group()));
    String font = data.consumeBoolean() ? "/F0 " : "/F1 ";
    int size = data.consumeInt(6, 12);
    String font0 = "BT " + font + size + " Tf ";
    switch (data.consumeInt(0, 5)) {
      case 0 -> add("%s %.2f %.2f Td (%s) Tj ET", font0, x, y, text);
      case 1 -> add("%s %.2f %.2f Td [(%s)] TJ ET", font0, x, y, kerned(text));
      case 2 -> add("%s 1 0 0 1 %.2f %.2f Tm (%s) Tj ET", font0, x, y, text);
      case 3 -> add("q 1 0 0 1 %.2f %.2f cm %s (%s) Tj ET Q", x, y, font0, text);
      case 4 -> add("%s %.2f %.2f Td 0 0 1 rg (%s) Tj 0 g ET", font0, x, y, text);
      default -> add("%s 90 Tz %.2f %.2f Td (%s) Tj 100 Tz ET", font0, x, y, text);
    }
  }

  /** Moved by a hair between characters, as typesetters do. */
  private String kerned(String text) {
    int shift = data.consumeInt(-40, 40);
    return String.join(") " + shift + " (", text.split("(?<=.)", -1));
  }

  private String number() {
    String number =
        data.consumeBoolean()
            ? data.consumeInt(0, 99) + "." + data.consumeInt(0, 99)
            : String.valueOf(data.consumeInt(0, 2000));
    return number.replace('7', '1');
  }

  private void hidden(double x, double y) {
    String text = data.pickValue(List.of("7", "7.7", "77.77", "Starch 7", "WSC 7.7"));
    String plain = String.format(Locale.ROOT, "BT /F0 9 Tf %.2f %.2f Td (%s) Tj ET", x, y, text);
    String after = String.format(Locale.ROOT, "%.2f %.2f %.1f 30 re", x - 5, y - 10, COLUMN - 2);
    switch (data.consumeInt(0, 11)) {
      case 0 -> add("q 1 g %s Q", plain);
      case 1 -> add("q 3 Tr %s Q", plain);
      case 2 -> add("BT /F0 9 Tf %.2f %.2f Td (%s) Tj ET", x + 700, y, text);
      case 3 -> add("BT /F0 9 Tf %.2f %.2f Td (%s) Tj ET", x, y - 900, text);
      case 4 -> add("q 0 0 1 1 re W n %s Q", plain);
      case 5 -> add("%s q 1 g %s f Q", plain, after);
      case 6 -> add("%s q 0 g %s f Q", plain, after);
      case 7 -> add("BT /F0 0.1 Tf %.2f %.2f Td (%s) Tj ET", x, y, text);
      case 8 -> add("/OC /L0 BDC %s EMC", plain);
      case 9 -> add("q /G0 gs %s Q", plain);
      case 10 -> add("q 0.02 0 0 0.02 %.2f %.2f cm BT /F0 9 Tf (%s) Tj ET Q", x, y, text);
      default -> add("q 1 0 0 1 %.2f %.2f cm /X0 Do Q", x, y);
    }
  }

  private void add(String form, Object... parts) {
    content.append(String.format(Locale.ROOT, form, parts)).append('\n');
  }

  private static byte[] written(List<String> objects) {
    StringBuilder out = new StringBuilder("%PDF-1.7\n");
    List<Integer> places = new ArrayList<>();
    for (int at = 0; at < objects.size(); at++) {
      places.add(out.length());
      out.append(at + 1).append(" 0 obj\n").append(objects.get(at)).append("\nendobj\n");
    }
    int table = out.length();
    out.append("xref\n0 ").append(objects.size() + 1).append("\n0000000000 65535 f \n");
    places.forEach(p -> out.append(String.format(Locale.ROOT, "%010d 00000 n \n", p)));
    out.append("trailer\n<</Size ").append(objects.size() + 1).append("/Root 1 0 R>>\n");
    out.append("startxref\n").append(table).append("\n%%EOF\n");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(out.toString().getBytes(StandardCharsets.ISO_8859_1));
    return bytes.toByteArray();
  }
}
