package rickyard.intake.grid.book;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import rickyard.intake.grid.Cell.Nature;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.ReadLimits;

/**
 * Reads an OpenDocument workbook (.ods, .fods).
 *
 * <p>A cell or row may stand for a million alike ones; here a repeated blank takes no room and a
 * repeated value counts as often as it stands.
 */
public final class OpenWorkbook {
  private static final String UNSEEN = "collapse filter";

  private final Book book;
  private final Set<String> hiddenStyles = new HashSet<>();

  private OpenWorkbook(Book book) {
    this.book = book;
  }

  /** Reads a packed workbook. */
  public static Opened read(ZipFile zip, ReadLimits limits) throws IOException {
    Packaged parts = new Packaged(zip, limits);
    parts.check();
    Optional<ZipArchiveEntry> manifest = parts.find("META-INF/manifest.xml");
    if (manifest.isPresent() && isEncrypted(parts, manifest.get())) {
      throw Book.encrypted();
    }
    ZipArchiveEntry content = parts.find("content.xml").orElseThrow(Book::damaged);
    try (InputStream in = parts.open(content)) {
      return read(in, limits);
    }
  }

  /** Reads the content of a workbook, or a workbook that is one flat XML file. */
  public static Opened read(InputStream content, ReadLimits limits) {
    try {
      OpenWorkbook workbook = new OpenWorkbook(new Book(limits));
      workbook.read(Xml.reader(content));
      return workbook.book.opened();
    } catch (XMLStreamException broken) {
      throw Book.damaged();
    }
  }

  private static boolean isEncrypted(Packaged parts, ZipArchiveEntry manifest) throws IOException {
    try (InputStream in = parts.open(manifest)) {
      XMLStreamReader xml = Xml.reader(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("encryption-data")) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException broken) {
      throw Book.damaged();
    }
  }

  private void read(XMLStreamReader xml) throws XMLStreamException {
    String style = "";
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD) {
        throw Book.damaged();
      }
      if (event != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "style" -> style = Xml.attribute(xml, "name");
        case "table-properties" -> {
          if (Xml.attribute(xml, "display").equals("false")) {
            hiddenStyles.add(style);
          }
        }
        case "table" -> table(xml);
        default -> {}
      }
    }
  }

  private void table(XMLStreamReader xml) throws XMLStreamException {
    if (hiddenStyles.contains(Xml.attribute(xml, "style-name"))) {
      book.hides();
      skip(xml);
      return;
    }
    String name = Xml.attribute(xml, "name");
    Sheet sheet = book.sheet();
    new OpenSheet(book, sheet).read(xml);
    book.add(sheet, name);
  }

  /** Steps over an element and all that is in it. */
  static void skip(XMLStreamReader xml) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  static boolean isUnseen(XMLStreamReader xml) {
    String visibility = Xml.attribute(xml, "visibility");
    return !visibility.isEmpty() && UNSEEN.contains(visibility);
  }

  /**
   * A cell's text with its nature.
   *
   * @param type of the stored value; empty for text
   * @param value as stored
   * @param display what the cell shows
   */
  static Optional<Shown> shown(String type, String value, String display, boolean formula) {
    Optional<Shown> plain =
        switch (type) {
          case "float", "percentage", "currency" -> Shown.of(Plain.number(value), display);
          case "date" -> Optional.of(day(value));
          case "time" -> Optional.of(new Shown(display, Nature.DATED));
          default -> Optional.of(new Shown(display, Nature.PRINTED));
        };
    if (!formula) {
      return plain;
    }
    boolean failed = display.startsWith("#") || display.startsWith("Err:") || display.isEmpty();
    return failed
        ? Optional.of(new Shown(display.isEmpty() ? "(formula)" : display, Nature.FAILED))
        : plain.map(s -> new Shown(s.text(), s.nature().computed()));
  }

  private static Shown day(String value) {
    try {
      return Formats.dated(
          value.contains("T") ? LocalDateTime.parse(value) : LocalDate.parse(value).atStartOfDay());
    } catch (DateTimeParseException other) {
      return new Shown(value, Nature.DATED);
    }
  }
}
