package rickyard.report.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import rickyard.report.csv.MorningTables;
import rickyard.report.csv.Table;
import rickyard.report.view.MorningView;

/**
 * summary.xlsx: the calls for people, then lots, horses, diets, questions and follow-ups, a sheet
 * each, with the columns and rows of the CSV files of the same names. Numbers and days are numbers
 * and days, an unknown one is an empty cell; text that a spreadsheet would run as a formula has the
 * apostrophe that it has in the CSV files.
 */
public final class SummaryBook {
  private static final String PROGRAM = "Rickyard";
  private static final String VERSION = "1.0";

  private SummaryBook() {}

  /** The whole file. */
  public static byte[] bytes(MorningView view) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(view, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Writes the whole file; the stream stays open. */
  public static void write(MorningView view, OutputStream out) throws IOException {
    ByteArrayOutputStream raw = new ByteArrayOutputStream();
    Workbook book = new Workbook(raw, PROGRAM, VERSION);
    for (Table table : tables(view)) {
      new BookSheet(book, table).write();
    }
    book.finish();
    Repacked.write(raw.toByteArray(), view.asOf(), out);
  }

  /** In the order in which a person opens them. */
  private static List<Table> tables(MorningView view) {
    List<Table> tables = new ArrayList<>();
    tables.add(CallTable.of(view));
    tables.addAll(MorningTables.ofBook(view));
    return tables;
  }
}
