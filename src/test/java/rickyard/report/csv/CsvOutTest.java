package rickyard.report.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CsvOutTest {

  private static String written(CsvField... row) {
    List<String> header =
        java.util.stream.IntStream.range(0, row.length).mapToObj(i -> "c").toList();
    String all = new String(CsvOut.write(header, List.of(List.of(row))), UTF_8);
    return all.substring(all.indexOf('\n') + 1);
  }

  @Test
  void theHeaderComesFirstAndLinesEndWithALineFeed() {
    byte[] bytes =
        CsvOut.write(
            List.of("lot", "u"), List.of(List.of(CsvField.text("L1"), CsvField.number(0.5, 2))));

    assertEquals("lot,u\nL1,0.50\n", new String(bytes, UTF_8));
  }

  @Test
  void textIsQuotedAndGuardedWhereItMustBe() {
    assertEquals(
        "\"a,b\",\"say \"\"x\"\"\"\n", written(CsvField.text("a,b"), CsvField.text("say \"x\"")));
    assertEquals(
        "'=1+1,'+1,'-1,'@x\n",
        written(
                CsvField.text("=1+1"),
                CsvField.text("+1"),
                CsvField.text("-1"),
                CsvField.text("@x"))
            .replace("\"", ""));
    assertEquals("a,ü\n", written(CsvField.text("a"), CsvField.text("\0ü")));
  }

  @Test
  void numbersAreWrittenPlainlyWhateverTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(
          "1234567.5,0.00001,-0.5,12000000000,0,0,100\n",
          written(
              CsvField.number(1234567.5),
              CsvField.number(1e-5),
              CsvField.number(-0.5),
              CsvField.number(1.2e10),
              CsvField.number(-0.0),
              CsvField.number(-0.0, 0),
              CsvField.number(100.0)));
      assertEquals(
          "42,1.10\n", written(CsvField.number(42), CsvField.number(new BigDecimal("1.10"))));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void roundingIsHalfUpOnThePrintedDigits() {
    assertEquals(
        "0.29,2.68,0,-0.3\n",
        written(
            CsvField.number(0.285, 2),
            CsvField.number(2.675, 2),
            CsvField.number(-0.04, 0),
            CsvField.number(-0.25, 1)));
  }

  @Test
  void whatIsNotThereIsBlank() {
    assertEquals(
        "x,,,,\n",
        written(
            CsvField.text("x"),
            CsvField.blank(),
            CsvField.text(Optional.empty()),
            CsvField.number(OptionalDouble.empty(), 1),
            CsvField.bound(Double.POSITIVE_INFINITY, 1)));
  }

  @Test
  void aNumberThatIsNoneOrARowOfAnotherWidthIsABug() {
    assertThrows(IllegalArgumentException.class, () -> CsvField.number(Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> CsvOut.write(List.of("a", "b"), List.of(List.of(CsvField.blank()))));
  }
}
