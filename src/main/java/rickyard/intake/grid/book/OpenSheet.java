package rickyard.intake.grid.book;

import java.util.BitSet;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One table of an OpenDocument workbook. */
final class OpenSheet {
  private static final int MOST_COLUMNS = 1 << 14;
  private static final int MOST_ROWS = 1 << 20;

  private final Book book;
  private final Sheet sheet;
  private final BitSet hiddenColumns = new BitSet();
  private int columns;
  private int row;

  OpenSheet(Book book, Sheet sheet) {
    this.book = book;
    this.sheet = sheet;
  }

  /** Reads from the start of the table to its end. */
  void read(XMLStreamReader xml) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "table-column" -> {
            column(xml);
            depth++;
          }
          case "table-row" -> row(xml);
          case "shapes", "forms", "table-source", "named-expressions" -> OpenWorkbook.skip(xml);
          default -> depth++;
        }
      }
    }
  }

  private void column(XMLStreamReader xml) {
    int from = Math.min(columns, MOST_COLUMNS);
    columns = from + Math.min(MOST_COLUMNS, repeated(xml, "number-columns-repeated"));
    if (OpenWorkbook.isUnseen(xml)) {
      hiddenColumns.set(from, columns);
    }
  }

  private static int repeated(XMLStreamReader xml, String attribute) {
    return Math.max(1, Xml.number(Xml.attribute(xml, attribute), 1));
  }

  private void row(XMLStreamReader xml) throws XMLStreamException {
    int times = repeated(xml, "number-rows-repeated");
    boolean hidden = OpenWorkbook.isUnseen(xml);
    int column = 0;
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        boolean cell = xml.getLocalName().equals("table-cell");
        if (cell || xml.getLocalName().equals("covered-table-cell")) {
          int wide = repeated(xml, "number-columns-repeated");
          cell(xml, cell && !hidden, column, wide, times);
          column = Math.min(MOST_COLUMNS, column + Math.min(MOST_COLUMNS, wide));
        } else {
          depth++;
        }
      }
    }
    row = Math.min(MOST_ROWS, row + Math.min(MOST_ROWS, times));
  }

  private void cell(XMLStreamReader xml, boolean seen, int column, int wide, int times)
      throws XMLStreamException {
    String type = Xml.attribute(xml, "value-type");
    String value = Xml.attribute(xml, type.equals("date") ? "date-value" : "value");
    boolean formula = !Xml.attribute(xml, "formula").isEmpty();
    int spanColumns = repeated(xml, "number-columns-spanned");
    int spanRows = repeated(xml, "number-rows-spanned");
    String display = text(xml);
    if (display.isBlank() && !formula) {
      return;
    }
    Optional<Shown> shown = OpenWorkbook.shown(type, value, display.strip(), formula);
    if (shown.isEmpty()) {
      return;
    }
    for (int r = 0; r < times; r++) {
      for (int c = 0; c < wide; c++) {
        if (!seen || hiddenColumns.get(column + c)) {
          book.count(1);
          book.hides();
        } else {
          sheet.cell(row + r, column + c, shown.get());
        }
      }
    }
    boolean spans = spanColumns > 1 || spanRows > 1;
    if (seen && spans) {
      sheet.merged(new Sheet.Merged(row, column, spanRows, Math.min(spanColumns, MOST_COLUMNS)));
    }
  }

  /** The paragraphs of a cell, notes left out. */
  private static String text(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        String name = xml.getLocalName();
        if (name.equals("annotation") || name.equals("shapes") || name.equals("frame")) {
          OpenWorkbook.skip(xml);
          continue;
        }
        depth++;
        boolean gap =
            name.equals("p") || name.equals("s") || name.equals("tab") || name.equals("line-break");
        text.append(gap ? " " : "");
      } else if (event == XMLStreamConstants.CHARACTERS && depth > 1) {
        text.append(xml.getText());
      }
    }
    return text.toString();
  }
}
