package rickyard.report.book;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;

/**
 * One table as sheets: the head frozen and bold, filters over it, a second sheet where it is full.
 */
final class BookSheet {
  /** Below the head of one sheet. */
  private static final int ROWS = Worksheet.MAX_ROWS - 1;

  private static final int FLUSHED = 1000;
  private static final Set<String> DAYS = Set.of("due");
  private static final Set<String> WIDE =
      Set.of("reason", "question", "what", "why", "choices", "What to do", "To say", "Why");
  private static final double WIDE_WIDTH = 60;
  private static final double WIDTH = 16;

  private final Workbook book;
  private final Table table;
  private final int most;

  BookSheet(Workbook book, Table table) {
    this(book, table, ROWS);
  }

  BookSheet(Workbook book, Table table, int most) {
    this.book = book;
    this.table = table;
    this.most = most;
  }

  void write() throws IOException {
    String name = table.file().replace(".csv", "");
    int count = table.rows().size();
    for (int first = 0, part = 1; part == 1 || first < count; first += most, part++) {
      sheet(part == 1 ? name : name + " " + part, first, Math.min(count, first + most));
    }
  }

  private void sheet(String name, int first, int end) throws IOException {
    Worksheet sheet = book.newWorksheet(name);
    head(sheet, end - first);
    for (int i = first; i < end; i++) {
      int row = i - first + 1;
      List<Field> fields = table.rows().get(i);
      for (int column = 0; column < fields.size(); column++) {
        cell(sheet, row, column, fields.get(column));
      }
      if (row % FLUSHED == 0) {
        sheet.flush();
      }
    }
    sheet.finish();
  }

  private void head(Worksheet sheet, int rows) {
    List<String> columns = table.columns();
    for (int column = 0; column < columns.size(); column++) {
      sheet.value(0, column, columns.get(column));
      sheet.width(column, WIDE.contains(columns.get(column)) ? WIDE_WIDTH : WIDTH);
    }
    sheet.range(0, 0, 0, columns.size() - 1).style().bold().set();
    sheet.freezePane(1, 1);
    sheet.setAutoFilter(0, 0, Math.max(1, rows), columns.size() - 1);
  }

  private void cell(Worksheet sheet, int row, int column, Field field) {
    boolean isDay = DAYS.contains(table.columns().get(column));
    field.<Boolean>fold(
        text -> (isDay && day(sheet, row, column, text)) || text(sheet, row, column, text),
        number -> number(sheet, row, column, number));
  }

  private static boolean text(Worksheet sheet, int row, int column, String text) {
    if (!text.isEmpty()) {
      sheet.value(row, column, CellText.of(CsvOut.guarded(text)));
    }
    return true;
  }

  private static boolean day(Worksheet sheet, int row, int column, String text) {
    try {
      sheet.value(row, column, LocalDate.parse(text));
      sheet.style(row, column).format("yyyy-mm-dd").set();
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }

  private static boolean number(Worksheet sheet, int row, int column, Optional<BigDecimal> number) {
    number.ifPresent(n -> sheet.value(row, column, n));
    return true;
  }
}
