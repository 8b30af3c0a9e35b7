package rickyard.report.csv;

import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import rickyard.report.text.Harmless;
import rickyard.tables.FormulaGuard;

/**
 * Our CSV: UTF-8 without a mark, commas, lines ended by a line feed, RFC 4180 quotes where needed.
 *
 * <p>Text that a spreadsheet would run as a formula (it starts with = + - @ tab or CR, also behind
 * apostrophes) gets one leading apostrophe, which {@link #unguarded} takes away again.
 */
public final class CsvOut {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

  private CsvOut() {}

  /** The whole file: the header, then the rows. */
  public static byte[] bytes(Table table) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(table, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Writes the whole file; the stream stays open. */
  public static void write(Table table, OutputStream out) throws IOException {
    Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    CSVPrinter printer = new CSVPrinter(text, FORMAT);
    printer.printRecord(table.columns());
    for (List<Field> row : table.rows()) {
      printer.printRecord(row.stream().map(Field::csv).toList());
    }
    printer.flush();
  }

  /** Text as a CSV cell holds it: made harmless, and guarded when it could run as a formula. */
  public static String guarded(String text) {
    return FormulaGuard.protect(Harmless.text(text));
  }

  /** The text of a cell that {@link #guarded} wrote. */
  public static String unguarded(String cell) {
    return FormulaGuard.strip(cell);
  }
}
