package rickyard.intake.grid;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.dhatim.fastexcel.Workbook;

/** Workbooks for tests: by the writing libraries, and part by part where no library would. */
final class Books {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private Books() {}

  /** A workbook by the writer of the XML kind. */
  static byte[] xlsx(Consumer<Workbook> fill) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", "1.0")) {
      fill.accept(workbook);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toByteArray();
  }

  /** An old binary workbook. */
  static byte[] xls(Consumer<HSSFWorkbook> fill) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      fill.accept(workbook);
      workbook.write(out);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toByteArray();
  }

  /** The parts of a workbook with one sheet, whose XML is given from inside its root. */
  static Map<String, byte[]> parts(String sheet) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put(
        "[Content_Types].xml",
        xml(
            "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
                + "<Default Extension='xml' ContentType='application/xml'/>"
                + "<Override PartName='/xl/workbook.xml' ContentType="
                + "'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'/>"
                + "</Types>"));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        xml(
            "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
                + "<Relationship Id='rId1' Target='worksheets/sheet1.xml' Type='"
                + RELATIONS
                + "/worksheet'/></Relationships>"));
    parts.put(
        "xl/workbook.xml",
        xml(
            "<workbook xmlns='%s' xmlns:r='%s'><sheets><sheet name='One' sheetId='1' r:id='rId1'/></sheets></workbook>"
                .formatted(MAIN, RELATIONS)));
    parts.put(
        "xl/worksheets/sheet1.xml",
        xml("<worksheet xmlns='%s'>%s</worksheet>".formatted(MAIN, sheet)));
    return parts;
  }

  static byte[] xml(String text) {
    return ("<?xml version='1.0' encoding='UTF-8'?>" + text).getBytes(StandardCharsets.UTF_8);
  }

  static byte[] zip(Map<String, byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toByteArray();
  }

  /** An OpenDocument workbook; the content is given from inside the body's spreadsheet. */
  static byte[] ods(String tables) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put(
        "mimetype",
        "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII));
    parts.put("content.xml", xml(content("office:document-content", tables)));
    return zip(parts);
  }

  static String content(String root, String tables) {
    String names = "urn:oasis:names:tc:opendocument:xmlns:";
    return "<"
        + root
        + " xmlns:office='"
        + names
        + "office:1.0' xmlns:table='"
        + names
        + "table:1.0' xmlns:text='"
        + names
        + "text:1.0' xmlns:style='"
        + names
        + "style:1.0'"
        + " office:mimetype='application/vnd.oasis.opendocument.spreadsheet'>"
        + "<office:body><office:spreadsheet>"
        + tables
        + "</office:spreadsheet></office:body></"
        + root
        + ">";
  }
}
