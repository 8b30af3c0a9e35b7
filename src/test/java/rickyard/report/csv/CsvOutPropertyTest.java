package rickyard.report.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rickyard.tables.FormulaGuard;

class CsvOutPropertyTest {
  private static final String NASTY = "=+-@\t\r\n'\",;#\\ \0|%<>&x1é\uFEFF\u2028\u202E\uFF1D";

  private static String hostile(Random random) {
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(12);
    for (int i = 0; i < length; i++) {
      int kind = random.nextInt(10);
      if (kind < 7) {
        text.append(NASTY.charAt(random.nextInt(NASTY.length())));
      } else if (kind < 9) {
        text.append((char) random.nextInt(0xD800));
      } else {
        text.appendCodePoint(0x10000 + random.nextInt(0xFFFFF));
      }
    }
    return text.toString();
  }

  @Test
  void tenThousandHostileTextsComeBackAndNoneCanRunAsAFormula() throws IOException {
    long seed = 6_021_023L;
    Random random = new Random(seed);
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < 2_500; i++) {
      texts.add(List.of(hostile(random), hostile(random), hostile(random), hostile(random)));
    }

    byte[] bytes =
        CsvOut.write(
            List.of("a", "b", "c", "d"),
            texts.stream().map(row -> row.stream().map(CsvField::text).toList()).toList());

    try (CSVParser parser =
        CSVParser.parse(
            new String(bytes, UTF_8),
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get())) {
      List<CSVRecord> records = parser.getRecords();
      assertEquals(texts.size() + 1, records.size(), "seed " + seed);
      for (int i = 0; i < texts.size(); i++) {
        for (int c = 0; c < 4; c++) {
          String cell = records.get(i + 1).get(c);
          String where = "seed " + seed + ", row " + i + ", cell " + c;
          assertEquals(texts.get(i).get(c).replace("\0", ""), FormulaGuard.strip(cell), where);
          assertFalse(!cell.isEmpty() && "=+-@\t\r\0".indexOf(cell.charAt(0)) >= 0, where);
        }
      }
    }
  }

  @Test
  void theSameCellsGiveTheSameBytes() {
    long seed = 77L;
    List<List<CsvField>> rows = new ArrayList<>();
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      rows.add(
          List.of(CsvField.text(hostile(random)), CsvField.number(random.nextGaussian() * 1e6)));
    }

    assertArrayEquals(CsvOut.write(List.of("a", "b"), rows), CsvOut.write(List.of("a", "b"), rows));
  }

  @Test
  void aNumberReadBackIsTheSameNumberAndHasNoExponent() {
    long seed = 31_337L;
    Random random = new Random(seed);
    for (int i = 0; i < 10_000; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20);
      String cell = CsvField.number(value).cell();
      assertEquals(value, Double.parseDouble(cell), "seed " + seed);
      assertFalse(cell.contains("E"), "seed " + seed);
    }
  }

  @Test
  void brokenSurrogatesAreReplacedNotLost() {
    byte[] bytes = CsvOut.write(List.of("a"), List.of(List.of(CsvField.text("x\uD800y"))));

    assertEquals("a\nx\uFFFDy\n", new String(bytes, UTF_8));
  }
}
