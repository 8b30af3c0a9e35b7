package rickyard.report.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a CSV output: UTF-8 without byte order mark, comma, {@code \n}, quotes where RFC 4180
 * needs them; the same cells give the same bytes on every machine.
 */
public final class CsvOut {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();

  private CsvOut() {}

  /**
   * The file's bytes: the header, then the rows in the order given.
   *
   * @param header column names
   * @param rows each with as many cells as the header
   * @throws IllegalArgumentException if a row has another number of cells
   */
  public static byte[] write(List<String> header, List<List<CsvField>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(header.stream().map(name -> CsvField.text(name).cell()).toList());
      for (List<CsvField> row : rows) {
        if (row.size() != header.size()) {
          throw new IllegalArgumentException(
              "a row must have " + header.size() + " cells, has " + row.size());
        }
        printer.printRecord(row.stream().map(CsvField::cell).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
