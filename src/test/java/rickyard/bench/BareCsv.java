package rickyard.bench;

import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Commons CSV merely reading a file: {@code BareCsv FILE}. */
public final class BareCsv {
  private BareCsv() {}

  public static void main(String[] args) throws Exception {
    long rows = 0;
    long signs = 0;
    try (Reader in = Files.newBufferedReader(Path.of(args[0]))) {
      for (CSVRecord row : CSVFormat.RFC4180.parse(in)) {
        rows++;
        for (String cell : row) {
          signs += cell.length();
        }
      }
    }
    System.out.println(rows + " rows, " + signs + " signs");
  }
}
