package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Tables: what can go wrong with bytes, quotes, columns and numbers. */
final class Texts {
  /**
   * Figures that some reader of numbers takes for a number below the limits, and no person does.
   */
  private static final List<String> FIGURES =
      List.of(
          "NaN",
          "Infinity",
          "-Infinity",
          "0x1p3",
          "1e999",
          "9,4,1",
          "--9",
          "9.4d",
          "9.4f",
          "\u0663.\u0663",
          "\uFF13.\uFF13",
          "\u0969.\u0969",
          "+-3.3",
          "3..3",
          "3.3.3",
          "3 .3",
          "=3.3",
          "=1+2",
          "=cmd|'/c calc'!A1",
          "@SUM(A1)",
          "3.3e-",
          "1/3",
          "\u2153",
          "\u2162",
          "three",
          "3,3",
          "(3.3)",
          "-3.3",
          "~3.3",
          "3.3-19",
          "I.3",
          "O.3",
          "3.3\u20DD",
          "\u202E3.51",
          "#REF!",
          "1_000",
          "1e-5",
          "0b11",
          "TRUE",
          "3.3 15.8",
          "3.3/15.8");

  private Texts() {}

  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(figures(paper));
    files.addAll(bytes(paper));
    files.addAll(shapes(paper));
    return files;
  }

  private static List<HostileFile> figures(Paper paper) {
    List<HostileFile> files = new ArrayList<>();
    for (int at = 0; at < FIGURES.size(); at++) {
      String figure = FIGURES.get(at);
      String field = figure.indexOf(',') >= 0 ? '"' + figure + '"' : figure;
      files.add(
          honest(
              "text",
              String.format(java.util.Locale.ROOT, "figure-%02d.csv", at),
              "a figure that is none",
              paper.csv(field, Paper.STARCH)));
    }
    return files;
  }

  private static List<HostileFile> bytes(Paper paper) {
    String csv = paper.csv();
    byte[] utf8 = csv.getBytes(StandardCharsets.UTF_8);
    byte[] lone = paper.csvBytes();
    lone[lone.length - 20] = (byte) 0xED;
    byte[] both = Zips.joined(utf16(paper.csv()), utf8);
    return List.of(
        notTaken(
            "text",
            "nul.csv",
            "a zero byte in the middle",
            paper.csv().replace("Starch", "Sta\u0000rch")),
        notTaken("text", "nuls.csv", "a million zero bytes", new byte[1 << 20]),
        honest("text", "lone-surrogate.csv", "half a character", lone),
        honest("text", "surrogate-16.csv", "half a character in two bytes", loneIn16(paper)),
        notTaken("text", "mixed-encodings.csv", "UTF-16, then UTF-8", both),
        notTaken(
            "text",
            "wrong-mark.csv",
            "says UTF-16, is UTF-8",
            Zips.joined(new byte[] {(byte) 0xFF, (byte) 0xFE}, paper.csvBytes())),
        honest(
            "text",
            "zero-width.csv",
            "characters without width in names and figures",
            paper.csv("1\u200B5.\u20608", "4\uFEFF.6")),
        honest("text", "combining.csv", "marks upon digits", paper.csv("15\u0338.8", "4.6\u0301")),
        honest(
            "text",
            "right-to-left.csv",
            "a figure that shows turned about",
            paper.csv("\u202E8.51\u202C", "4.6")),
        notTaken("text", "random.csv", "noise", noise(200_000)),
        honest(
            "text",
            "escape-codes.csv",
            "terminal codes",
            paper.csv("\u001B[2J15.8", "\u001B]0;x\u0007" + "4.6")),
        honest("text", "replacement.csv", "unreadable figures", paper.csv("1\uFFFD.3", "\uFFFD.3")),
        honest(
            "text",
            "ebcdic.csv",
            "a mainframe's text",
            paper.csv().getBytes(java.nio.charset.Charset.forName("IBM037"))));
  }

  private static byte[] utf16(String text) {
    return text.getBytes(StandardCharsets.UTF_16LE);
  }

  private static byte[] loneIn16(Paper paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xFE});
    out.writeBytes(utf16(paper.csv()));
    out.writeBytes(new byte[] {0, (byte) 0xD8, 'x', 0});
    return out.toByteArray();
  }

  private static byte[] noise(int count) {
    byte[] bytes = new byte[count];
    new java.util.Random(7).nextBytes(bytes);
    return bytes;
  }

  private static List<HostileFile> shapes(Paper paper) {
    String csv = paper.csv();
    String wide = "x,".repeat(100_000) + "\n" + "1,".repeat(100_000) + "\n";
    String heads = paper.csv().replace("Result,Unit", "Result,Result");
    String swallowing = paper.csv().replace("Water", "\"Water");
    return List.of(
        honest("text", "unclosed-quote.csv", "a quote that swallows the rest", swallowing),
        notTaken("text", "quotes.csv", "nothing but quotes", "\"".repeat(300_001)),
        notTaken("text", "one-line.csv", "10 MB in one line", "Starch 0.3 ".repeat(950_000)),
        notTaken("text", "one-cell.csv", "10 MB in one cell", "9".repeat(10_000_000)),
        notTaken("text", "columns.csv", "100,000 columns", wide),
        notTaken("text", "commas.csv", "2 million commas", ",".repeat(2_000_000)),
        notTaken("text", "rows.csv", "600,000 rows", "WSC,3.3\n".repeat(600_000)),
        notTaken("text", "blank-lines.csv", "5 million blank lines", "\n".repeat(5_000_000)),
        honest("text", "two-heads.csv", "a heading twice", heads),
        honest(
            "text",
            "ragged.csv",
            "rows of all lengths",
            csv.replaceFirst("(?m)^(.*Starch.*)$", "$1,0.3,0.3\nStarch\n,,,,0.3")),
        honest(
            "text",
            "head-again.csv",
            "the head in the middle",
            paper.csv() + paper.csv("15.9", "4.7")),
        notTaken(
            "text", "twice.csv", "two figures for one analyte and one lot", twice(paper.lot())),
        honest(
            "text",
            "formulas.csv",
            "formulas in every text",
            paper.csv().replace("grass hay", "=HYPERLINK(\"\"http://127.0.0.1:9\"\")")),
        honest(
            "text",
            "markup.csv",
            "markup in the lot's neighbour",
            paper.csv().replace("grass hay", "<script>alert(1)</script>${7*7}__${x}__")),
        honest(
            "text",
            "sep-line.csv",
            "a line that names a delimiter that is not used",
            "sep=;\n" + paper.csv()),
        notTaken("text", "sep-odd.csv", "a delimiter nobody uses", "sep=\u0007\n" + paper.csv()),
        honest("text", "no-newline.csv", "old line ends", paper.csv().replace('\n', '\r')),
        notTaken("text", "dots.txt", "leaders without end", "Starch" + ".".repeat(3_000_000)),
        notTaken(
            "text",
            "blanks.txt",
            "a figure ten million blanks away",
            "Starch" + " ".repeat(10_000_000) + "0.3"),
        notTaken("text", "words.txt", "the longest word", "Starch".repeat(400_000)),
        notTaken("text", "tabs.txt", "tabs", "\t".repeat(2_000_000) + "0.3"),
        notTaken("text", "json.csv", "another format", "{\"WSC\": 3.3, \"Starch\": 0.3}"));
  }

  private static String twice(String lot) {
    return Paper.csv(lot, Paper.WSC, Paper.STARCH)
        + Paper.csv(lot, Paper.LIE_WSC, Paper.LIE_STARCH).replaceFirst("(?s)^.*?\n", "");
  }
}
