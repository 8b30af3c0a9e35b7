package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Web pages and workbooks: outside entities, laughing ones, scripts, spans, and what is not shown.
 */
final class Markup {
  private static final String LIE =
      "<tr%s><td>Water soluble carbohydrates</td><td>3.3</td></tr>"
          + "<tr%s><td>Starch</td><td>0.3</td></tr>";
  private static final String OUTSIDE =
      "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\"><!ENTITY n SYSTEM "
          + "\"http://127.0.0.1:9/x\"><!ENTITY % p SYSTEM \"http://127.0.0.1:9/y\"> %p;]>";

  private Markup() {}

  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(pages(paper));
    files.addAll(unseen(paper));
    files.addAll(workbooks(paper));
    return files;
  }

  private static String laughs() {
    StringBuilder out = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 \"lol\">");
    for (int at = 1; at < 12; at++) {
      out.append("<!ENTITY a" + at + " \"" + ("&a" + (at - 1) + ";").repeat(10) + "\">");
    }
    return out + "]>";
  }

  private static List<HostileFile> pages(Paper paper) {
    String xhtml = "<?xml version=\"1.0\"?>";
    String body = paper.html("", "", "");
    return List.of(
        honest(
            "html",
            "script.html",
            "a script that would write",
            paper.html(
                "<script>document.write('WSC 3.3')</script>",
                "",
                "<script>fetch('http://127.0.0.1:9')</script><iframe src=http://127.0.0.1:9>"
                    + "</iframe><img src=http://127.0.0.1:9><meta http-equiv=refresh content='0;"
                    + "url=http://127.0.0.1:9'>")),
        honest(
            "html",
            "outside.xhtml",
            "outside entities",
            xhtml + OUTSIDE + body.replace("<!DOCTYPE html>", "").replace("grass hay", "&e;&n;")),
        honest(
            "html",
            "laughs.xhtml",
            "a thousand million laughs",
            xhtml + laughs() + body.replace("<!DOCTYPE html>", "").replace("grass hay", "&a11;")),
        notTaken(
            "html",
            "tables.html",
            "1,000 tables in one another",
            "<html>"
                + "<table><tr><td>".repeat(1000)
                + "Starch 0.3"
                + "</td></tr></table>".repeat(1000)),
        notTaken("html", "tags.html", "200,000 open tags", "<html>" + "<div>".repeat(200_000)),
        honest(
            "html",
            "colspan.html",
            "a span of thousands of millions",
            paper.html(
                "", "<tr><td colspan=2000000000 rowspan=2000000000>x</td><td>0.3</td></tr>", "")),
        notTaken(
            "html",
            "spans.html",
            "100,000 cells of a thousand columns",
            "<html><table>" + "<tr><td colspan=1000 rowspan=1000>0.3</td></tr>".repeat(100_000)),
        notTaken(
            "html",
            "cells.html",
            "a million cells",
            "<html><table>" + "<tr><td>Starch</td><td>0.3</td></tr>".repeat(500_000)),
        notTaken(
            "html",
            "attribute.html",
            "an attribute of 10 MB",
            "<html><p title=\"" + "a".repeat(10_000_000) + "\">"),
        honest(
            "html",
            "charset.html",
            "says one charset, is another",
            paper.html("<meta charset=utf-16>", "", "")));
  }

  private static String lie(String attributes) {
    return LIE.replace("%s", attributes);
  }

  private static List<HostileFile> unseen(Paper paper) {
    List<HostileFile> files = new ArrayList<>();
    List<String> ways =
        List.of(
            " style=\"display:none\"",
            " style='visibility: hidden'",
            " hidden",
            " style=\"font-size:0\"",
            " style=\"opacity:0\"",
            " style=\"color:#fff\"",
            " style=\"color: white; background: white\"",
            " class=\"h\"",
            " style=\"position:absolute;left:-9999px\"",
            " style=\"text-indent:-9999px\"",
            " style=\"height:0;overflow:hidden\"",
            " style=\"transform:scale(0)\"");
    for (int at = 0; at < ways.size(); at++) {
      files.add(
          honest(
              "html",
              String.format(java.util.Locale.ROOT, "unseen-%02d.html", at),
              "a low figure that the page does not show",
              paper.html("<style>.h{display:none}</style>", lie(ways.get(at)), "")));
      files.add(
          honest(
              "html",
              String.format(java.util.Locale.ROOT, "alone-%02d.html", at),
              "low figures that the page does not show and no others",
              withoutSugars(paper.html("<style>.h{display:none}</style>", "", ""))
                  .replace("</table>", lie(ways.get(at)) + "</table>")));
    }
    files.add(
        honest(
            "html",
            "comment.html",
            "a low figure in a comment",
            paper.html("", "<!--" + lie("") + "-->", "")));
    files.add(
        honest(
            "html",
            "input.html",
            "a low figure in a field",
            paper.html(
                "", "", "<p>WSC <input value=\"3.3\"> Starch <input type=hidden value=0.3>")));
    files.add(
        honest(
            "html",
            "struck.html",
            "a figure struck out",
            paper.html("", lie("").replace("3.3", "<del>3.3</del>"), "")));
    files.add(
        honest(
            "html",
            "turned.html",
            "a figure that shows turned about",
            paper.html("", "<tr><td>Sugar</td><td><bdo dir=rtl>3.51</bdo></td></tr>", "")));
    return files;
  }

  private static String withoutSugars(String page) {
    return page.replaceAll("(?m)^<tr><td>(Water|Starch).*$", "");
  }

  private static byte[] packed(String type, String... parts) {
    return Zips.zip(entries(type, parts));
  }

  private static List<Zips.Entry> entries(String type, String... parts) {
    List<Zips.Entry> entries = new ArrayList<>();
    entries.add(Zips.Entry.stored("mimetype", utf8(type)));
    entries.add(
        Zips.Entry.deflated(
            "[Content_Types].xml",
            utf8(
                "<?xml version=\"1.0\"?><Types xmlns=\"http://schemas.openxmlformats.org/package/2006/"
                    + "content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd."
                    + "openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType="
                    + "\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType="
                    + "\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                    + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"application/vnd."
                    + "openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/></Types>")));
    for (int at = 0; at < parts.length; at += 2) {
      entries.add(Zips.Entry.deflated(parts[at], utf8(parts[at + 1])));
    }
    return entries;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  /** A workbook of one sheet whose inner XML is given. */
  private static byte[] xlsx(String doctype, String sheet) {
    List<Zips.Entry> entries = workbook();
    entries.add(
        Zips.Entry.deflated(
            "xl/worksheets/sheet1.xml",
            utf8(
                "<?xml version=\"1.0\"?>"
                    + doctype
                    + "<worksheet xmlns=\""
                    + MAIN
                    + "\"><sheetData>"
                    + sheet
                    + "</sheetData></worksheet>")));
    return Zips.zip(entries);
  }

  /** A workbook whose sheet is so many MiB of blanks. */
  static byte[] blankSheet(int mib) {
    List<Zips.Entry> entries = workbook();
    String head = "<worksheet xmlns=\"" + MAIN + "\"><sheetData><row r=\"1\">";
    String tail = "</row></sheetData></worksheet>";
    entries.add(Bulk.packed(true, head, ' ', mib, tail).entry("xl/worksheets/sheet1.xml"));
    return Zips.zip(entries);
  }

  private static List<Zips.Entry> workbook() {
    String rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    String rels =
        "<?xml version=\"1.0\"?><Relationships xmlns=\"http://schemas.openxmlformats.org/"
            + "package/2006/relationships\"><Relationship Id=\"r1\" Type=\""
            + rel
            + "/%s\" Target=\"%s\"/></Relationships>";
    return entries(
        "application/x",
        "_rels/.rels",
        rels.formatted("officeDocument", "xl/workbook.xml"),
        "xl/_rels/workbook.xml.rels",
        rels.formatted("worksheet", "worksheets/sheet1.xml"),
        "xl/workbook.xml",
        "<?xml version=\"1.0\"?><workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + rel
            + "\"><sheets><sheet name=\"S\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
  }

  private static String rows(Paper paper, String attributes) {
    StringBuilder out = new StringBuilder();
    int row = 0;
    for (List<String> line : paper.lines()) {
      row++;
      out.append("<row r=\"" + row + "\">");
      out.append(cell("A" + row, line.get(0))).append(cell("B" + row, line.get(1)));
      out.append("</row>");
    }
    out.append("<row r=\"11\"" + attributes + ">");
    out.append(cell("A11", "Water soluble carbohydrates")).append(cell("B11", Paper.LIE_WSC));
    return out + "</row>";
  }

  private static String cell(String place, String text) {
    return "<c r=\"" + place + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  private static List<HostileFile> workbooks(Paper paper) {
    String many = "<row r=\"1\">" + "<c r=\"XFD1\"><v>3.3</v></c>".repeat(400_000) + "</row>";
    String formula =
        rows(paper, " hidden=\"1\"")
            .replace(cell("B7", Paper.WSC), "<c r=\"B7\"><f>15.8*1</f><v>3.3</v></c>");
    byte[] ods =
        packed(
            "application/vnd.oasis.opendocument.spreadsheet",
            "content.xml",
            "<?xml version=\"1.0\"?>"
                + OUTSIDE
                + "<office:document-content xmlns:office"
                + "=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\">&e;</office:document-content>");
    byte[] repeated =
        packed(
            "application/vnd.oasis.opendocument.spreadsheet",
            "content.xml",
            "<?xml version=\"1.0\"?><office:document-content xmlns:office=\"urn:oasis:"
                + "names:tc:opendocument:xmlns:office:1.0\" xmlns:table=\"urn:oasis:names:tc:"
                + "opendocument:xmlns:table:1.0\" xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:"
                + "text:1.0\"><office:body><office:spreadsheet><table:table table:name=\"S\">"
                + "<table:table-row table:number-rows-repeated=\"1000000000\"><table:table-cell "
                + "table:number-columns-repeated=\"1000000000\"><text:p>Starch</text:p>"
                + "</table:table-cell></table:table-row></table:table></office:spreadsheet>"
                + "</office:body></office:document-content>");
    byte[] ole = new byte[4096];
    System.arraycopy(
        new byte[] {
          (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
        },
        0,
        ole,
        0,
        8);
    return List.of(
        honest(
            "workbook",
            "outside.xlsx",
            "outside entities",
            xlsx(OUTSIDE, rows(paper, " hidden=\"1\"").replace("grass hay", "&e;&n;"))),
        honest(
            "workbook",
            "laughs.xlsx",
            "a thousand million laughs",
            xlsx(laughs(), rows(paper, " hidden=\"1\"").replace("grass hay", "&a11;"))),
        notTaken("workbook", "columns.xlsx", "400,000 cells in the last column", xlsx("", many)),
        honest(
            "workbook",
            "hidden-row.xlsx",
            "a lower figure in a hidden row",
            xlsx("", rows(paper, " hidden=\"1\""))),
        honest(
            "workbook",
            "formula.xlsx",
            "a formula whose kept result is another",
            xlsx("", formula)),
        notTaken(
            "workbook",
            "far.xlsx",
            "a cell in row 2,000,000,000",
            xlsx("", "<row r=\"2000000000\"><c r=\"ZZZZZZ2000000000\"><v>1</v></c></row>")),
        notTaken("workbook", "outside.ods", "outside entities", ods),
        notTaken("workbook", "repeated.ods", "a cell repeated a million million times", repeated),
        notTaken("workbook", "old.xls", "an old workbook's head and nothing more", ole));
  }
}
