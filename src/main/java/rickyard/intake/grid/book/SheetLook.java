package rickyard.intake.grid.book;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * What the cell reader does not tell of a sheet: columns and rows of no width, and merged cells.
 *
 * @param columns hidden columns from 0
 * @param rows hidden rows from 0
 * @param merged merged cells
 */
record SheetLook(BitSet columns, BitSet rows, List<Sheet.Merged> merged) {
  private static final int MOST_COLUMNS = 1 << 14;
  private static final int MOST_ROWS = 1 << 20;
  private static final Pattern RANGE =
      Pattern.compile("([A-Z]{1,3})([0-9]{1,7}):([A-Z]{1,3})([0-9]{1,7})");

  SheetLook() {
    this(new BitSet(), new BitSet(), new ArrayList<>());
  }

  /** Reads one sheet's part. */
  static SheetLook of(InputStream in) throws IOException {
    SheetLook look = new SheetLook();
    try (in) {
      XMLStreamReader xml = Xml.reader(in);
      boolean ofNumber = false;
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          look.take(xml);
          if (xml.getLocalName().equals("c")) {
            String type = Xml.attribute(xml, "t");
            ofNumber = type.isEmpty() || type.equals("n");
          } else if (xml.getLocalName().equals("v") && ofNumber) {
            // The cell reader would make a number of any length, in quadratic time.
            Plain.checkLength(xml.getElementText());
          }
        }
      }
      return look;
    } catch (XMLStreamException broken) {
      throw Book.damaged();
    }
  }

  private void take(XMLStreamReader xml) {
    switch (xml.getLocalName()) {
      case "col" -> column(xml);
      case "row" -> row(xml);
      case "mergeCell" -> merge(Xml.attribute(xml, "ref"));
      default -> {}
    }
  }

  private void column(XMLStreamReader xml) {
    boolean none = isZero(Xml.attribute(xml, "width"));
    if (none || Xml.isYes(Xml.attribute(xml, "hidden"))) {
      int from = Math.max(1, Xml.number(Xml.attribute(xml, "min"), 1));
      int to = Math.min(MOST_COLUMNS, Xml.number(Xml.attribute(xml, "max"), from));
      columns.set(from - 1, Math.max(from, to));
    }
  }

  private void row(XMLStreamReader xml) {
    int number = Xml.number(Xml.attribute(xml, "r"), 0);
    boolean hidden = isZero(Xml.attribute(xml, "ht")) || Xml.isYes(Xml.attribute(xml, "hidden"));
    if (hidden && number > 0 && number <= MOST_ROWS) {
      rows.set(number - 1);
    }
  }

  private static boolean isZero(String size) {
    return size.matches("0+(\\.0*)?");
  }

  private void merge(String range) {
    Matcher match = RANGE.matcher(range);
    if (match.matches() && merged.size() < MOST_ROWS) {
      int row = Xml.number(match.group(2), 1) - 1;
      int column = column(match.group(1));
      int rowsTaken = Xml.number(match.group(4), 1) - row;
      int columnsTaken = Math.min(MOST_COLUMNS, column(match.group(3)) + 1) - column;
      if (row >= 0 && rowsTaken > 0 && columnsTaken > 0) {
        merged.add(new Sheet.Merged(row, column, rowsTaken, columnsTaken));
      }
    }
  }

  private static int column(String letters) {
    int number = 0;
    for (int at = 0; at < letters.length(); at++) {
      number = 26 * number + letters.charAt(at) - 'A' + 1;
    }
    return number - 1;
  }
}
