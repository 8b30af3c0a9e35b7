package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;
import static rickyard.hostile.HostileFile.refused;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Files that are nothing, or two things at once, or not what they are called. */
final class Odd {
  private Odd() {}

  static List<HostileFile> all(Paper paper) {
    byte[] pdf = RawPdf.page("", RawPdf.FONTS, RawPdf.report(paper)).bytes();
    byte[] zip = Zips.zip(Zips.Entry.deflated("results.csv", paper.csvBytes()));
    byte[] lies =
        Paper.csv(paper.lot(), Paper.LIE_WSC, Paper.LIE_STARCH).getBytes(StandardCharsets.UTF_8);
    byte[] html = paper.html("", "", "").getBytes(StandardCharsets.UTF_8);
    List<HostileFile> files = new ArrayList<>();
    files.add(refused("odd", "empty.pdf", "no bytes", new byte[0], "empty"));
    for (int value : new int[] {0, 10, 37, 80, 255}) {
      files.add(
          notTaken("odd", "one-byte-" + value + ".csv", "one byte", new byte[] {(byte) value}));
    }
    files.add(honest("odd", "table.pdf", "a table called PDF", paper.csvBytes()));
    files.add(
        honest(
            "odd",
            "pdf.csv",
            "a PDF called table",
            RawPdf.page("", RawPdf.FONTS, RawPdf.report(paper)).bytes()));
    files.add(honest("odd", "no-ending", "no ending", paper.csvBytes()));
    files.add(honest("odd", "pdf-and-zip.pdf", "a PDF with a zip behind", Zips.joined(pdf, zip)));
    files.add(
        honest(
            "odd",
            "pdf-and-html.html",
            "a page with a PDF behind",
            Zips.joined(html, RawPdf.page("", RawPdf.FONTS, RawPdf.report(paper)).bytes())));
    files.add(
        notTaken(
            "odd",
            "head-far-in.csv",
            "a PDF's head in a table's middle",
            Zips.joined("Note,%PDF-1.7\n".getBytes(StandardCharsets.UTF_8), lies)));
    files.add(
        notTaken(
            "odd",
            "picture.pdf",
            "a picture's head",
            Zips.joined(
                new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0}, new byte[99])));
    files.add(
        notTaken(
            "odd",
            "program",
            "a program",
            Zips.joined(new byte[] {0x7F, 'E', 'L', 'F', 2, 1, 1}, new byte[500])));
    files.add(
        notTaken(
            "odd",
            "letter.rtf",
            "a letter",
            "{\\rtf1 WSC 3.3 Starch 0.3}".getBytes(StandardCharsets.US_ASCII)));
    return files;
  }

  /** Names that a folder allows and programs stumble over. */
  static List<HostileFile> names(Paper paper) {
    List<String> names =
        List.of(
            "line\nbreak.csv",
            "tab\tand\rreturn.csv",
            "\u001B[31mred.csv",
            "<b>bold & \"quoted\" '.csv",
            "=cmd|' calc'!A1.csv",
            "-rf.csv",
            "@sum(1).csv",
            "CON",
            "trailing blank .csv ",
            "%2e%2e%2fup.csv",
            "\u202Evsc.desrever.pdf",
            "a\u0301-and-\u00E1.csv",
            "x".repeat(240) + ".csv",
            "${jndi:ldap:127.0.0.1:9}.csv",
            "!part!name.csv",
            "Same Name.csv",
            "same name.csv");
    List<HostileFile> files = new ArrayList<>();
    for (String name : names) {
      files.add(honest("name", name, "a name that programs stumble over", paper.csvBytes()));
    }
    return files;
  }
}
