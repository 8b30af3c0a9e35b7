package rickyard.intake.grid.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.SheetVisibility;
import rickyard.intake.grid.Cell.Nature;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.ReadLimits;

/** Reads a workbook of XML parts (.xlsx, .xlsm); its macros are bytes that nobody looks at. */
public final class XmlWorkbook {
  private final Packaged parts;
  private final Book book;

  private XmlWorkbook(Packaged parts, Book book) {
    this.parts = parts;
    this.book = book;
  }

  /**
   * Reads a workbook.
   *
   * @param bytes the zip
   * @param zip the same, opened
   */
  public static Opened read(byte[] bytes, ZipFile zip, ReadLimits limits) throws IOException {
    Packaged parts = new Packaged(zip, limits);
    parts.check();
    try {
      return new XmlWorkbook(parts, new Book(limits)).read(bytes);
    } catch (ExcelReaderException | UncheckedIOException broken) {
      throw Book.damaged();
    }
  }

  private Opened read(byte[] bytes) throws IOException {
    // Without a part for styles every number is shown as it is.
    boolean styled = parts.matching(".*/styles[^/]*\\.xml").isPresent();
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(styled, false))) {
      Map<String, String> places = places();
      Formats formats = new Formats(workbook.isDate1904());
      for (var sheet : workbook.getSheets().toList()) {
        if (sheet.getVisibility() == SheetVisibility.VISIBLE) {
          read(sheet, look(places.getOrDefault(sheet.getId(), "")), formats);
        } else {
          book.hides();
        }
      }
    }
    return book.opened();
  }

  private void read(org.dhatim.fastexcel.reader.Sheet from, SheetLook look, Formats formats)
      throws IOException {
    Sheet sheet = book.sheet();
    try (Stream<Row> rows = from.openStream()) {
      for (Iterator<Row> each = rows.iterator(); each.hasNext(); ) {
        Row row = each.next();
        boolean hidden = row.isHidden() || look.rows().get(row.getRowNum() - 1);
        for (Cell cell : row) {
          if (cell == null || isBlank(cell)) {
            continue;
          }
          if (hidden || look.columns().get(cell.getColumnIndex())) {
            book.hides();
          } else {
            take(sheet, row.getRowNum() - 1, cell, formats);
          }
        }
      }
    }
    look.merged().forEach(sheet::merged);
    book.add(sheet, from.getName());
  }

  private static boolean isBlank(Cell cell) {
    return cell.getType() == CellType.EMPTY
        || (cell.getType() != CellType.FORMULA && cell.getRawValue() == null);
  }

  private void take(Sheet sheet, int row, Cell cell, Formats formats) {
    int column = cell.getColumnIndex();
    switch (cell.getType()) {
      case NUMBER -> number(cell, formats).ifPresent(s -> sheet.cell(row, column, s));
      case FORMULA -> formula(sheet, row, cell, formats);
      case ERROR -> sheet.cell(row, column, cell.getRawValue(), Nature.FAILED);
      case BOOLEAN -> sheet.cell(row, column, truth(cell.getRawValue()), Nature.PRINTED);
      default -> text(sheet, row, cell);
    }
  }

  private static void text(Sheet sheet, int row, Cell cell) {
    Object text = cell.getValue();
    if (text != null) {
      sheet.cell(row, cell.getColumnIndex(), text.toString(), Nature.PRINTED);
    }
  }

  private static String truth(String raw) {
    return Xml.isYes(raw) ? "TRUE" : "FALSE";
  }

  private static Optional<Shown> number(Cell cell, Formats formats) {
    BigDecimal stored = Plain.number(cell.getRawValue());
    int index = cell.getDataFormatId() == null ? 0 : cell.getDataFormatId();
    String builtin =
        index < BuiltinFormats.getAll().length ? BuiltinFormats.getBuiltinFormat(index) : "";
    String format = cell.getDataFormatString() == null ? builtin : cell.getDataFormatString();
    return formats.shown(stored, index, format);
  }

  private static void formula(Sheet sheet, int row, Cell cell, Formats formats) {
    String raw = cell.getRawValue() == null ? "" : cell.getRawValue().strip();
    int column = cell.getColumnIndex();
    if (raw.isEmpty() || raw.startsWith("#")) {
      sheet.cell(row, column, raw.isEmpty() ? "(formula)" : raw, Nature.FAILED);
    } else if (cell.getValue() instanceof BigDecimal) {
      number(cell, formats)
          .ifPresent(s -> sheet.cell(row, column, s.text(), s.nature().computed()));
    } else {
      boolean truth = cell.getValue() instanceof Boolean;
      sheet.cell(row, column, truth ? truth(raw) : raw, Nature.COMPUTED);
    }
  }

  private SheetLook look(String place) throws IOException {
    // Without its part nobody knows what the sheet hides.
    return SheetLook.of(parts.open(parts.find(place).orElseThrow(Book::damaged)));
  }

  /** Where each sheet's part lies, by the id that the workbook gives it. */
  private Map<String, String> places() throws IOException {
    Map<String, String> places = new TreeMap<>();
    Optional<ZipArchiveEntry> relations = parts.matching("([^/]*/)*_rels/workbook[^/]*\\.rels");
    if (relations.isEmpty()) {
      return places;
    }
    String folder = relations.get().getName().replaceFirst("_rels/[^/]*$", "");
    try (InputStream in = parts.open(relations.get())) {
      XMLStreamReader xml = Xml.reader(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("Relationship")) {
          String target = Xml.attribute(xml, "Target");
          places.put(
              Xml.attribute(xml, "Id"),
              target.startsWith("/") ? target.substring(1) : folder + target);
        }
      }
      return places;
    } catch (XMLStreamException broken) {
      throw Book.damaged();
    }
  }
}
