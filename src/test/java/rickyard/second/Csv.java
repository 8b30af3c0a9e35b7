package rickyard.second;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table of text as rows of cells by column name. */
final class Csv {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private Csv() {}

  static List<Map<String, String>> read(Path file) {
    try {
      return parse(Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Map<String, String>> parse(String text) {
    List<Map<String, String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (CSVRecord row : parser) {
        Map<String, String> cells = new LinkedHashMap<>();
        row.toMap().forEach((name, cell) -> cells.put(name, cell.strip()));
        rows.add(cells);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  /** The number of a cell; NaN for a blank one. */
  static double number(String cell) {
    return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
  }

  /** Half of the last printed decimal. */
  static double halfWidth(String printed) {
    int point = printed.indexOf('.');
    return 0.5 * Math.pow(10, point < 0 ? 0 : -(printed.length() - point - 1));
  }
}
