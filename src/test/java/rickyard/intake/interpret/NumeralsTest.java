package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as laboratories print them. */
class NumeralsTest {

  @ParameterizedTest(name = "{0} in a file with a decimal {1} is {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "9.4;POINT;NUMBER 9.4 +-0.05",
        "9,4;COMMA;NUMBER 9.4 +-0.05",
        ".40;POINT;NUMBER 0.40 +-0.005",
        "12;OPEN;NUMBER 12 +-0.5",
        "1,200;POINT;NUMBER 1200 +-0.5",
        "1.200;COMMA;NUMBER 1200 +-0.5",
        "1.200;POINT;NUMBER 1.200 +-0.0005",
        "1.200;OPEN;number-ambiguous",
        "9.4;MIXED;decimal-mark-mixed",
        "1,20;POINT;number-ambiguous",
        "1.234,5;COMMA;NUMBER 1234.5 +-0.05",
        "<0.5;POINT;BELOW 0.5 +-0.05",
        "< 0.5;POINT;BELOW 0.5 +-0.05",
        ">12;POINT;ABOVE 12 +-0.5",
        "1.2E3;POINT;NUMBER 1200 +-50",
        "1.2x10^3;POINT;NUMBER 1200 +-50",
        "9.4*;POINT;NUMBER 9.4 +-0.05",
        "9.4 (a);POINT;NUMBER 9.4 +-0.05",
        "9.4 +/- 0.3;POINT;NUMBER 9.4 +-0.05",
        "9.2-9.6;POINT;range-printed",
        "-0.3;POINT;negative-number",
        "1O.4;POINT;letters-in-number",
        "l0.4;POINT;letters-in-number",
        "-;POINT;ABSENT",
        "NaN;POINT;none",
        "Infinity;POINT;none",
        "0x1p3;POINT;NUMBER 0 +-0.5 rest x1p3",
        "9.4d;POINT;NUMBER 9.4 +-0.05 rest d",
        "\u0669.\u0664;POINT;none",
        "12 345;POINT;number-ambiguous",
        "11 234,s;POINT;none",
        "1'234,;POINT;none",
        "0.4\uFFFD;POINT;letters-in-number",
        "1\uFFFD %;POINT;letters-in-number",
        "\uFFFD3.51;POINT;letters-in-number",
        "3.3\u20DD;POINT;none",
        "15\u0338.8;POINT;none"
      })
  void isReadStrictly(String text, Dialect dialect, String expected) {
    assertEquals(expected, words(text, dialect));
  }

  @Test
  void aGapInANumberIsAThousandsMarkOnlyWhereTheCellIsCertain() {
    assertEquals(
        "12345",
        Numerals.read("12 345", Dialect.POINT, true).orElseThrow().number().toPlainString());
  }

  @Test
  void theDialectComesFromAllNumbersTogether() {
    assertEquals(Dialect.COMMA, Dialect.of(List.of("1.200", "9,4")));
    assertEquals(Dialect.POINT, Dialect.of(List.of("1.200", "9.4", "0.850")));
    assertEquals(Dialect.OPEN, Dialect.of(List.of("1.200", "150")));
    assertEquals(Dialect.MIXED, Dialect.of(List.of("9.4", "9,4")));
    assertEquals(Dialect.COMMA, Dialect.of(List.of("1.234.567")));
  }

  private static String words(String text, Dialect dialect) {
    return Numerals.read(text, dialect, false)
        .map(
            f ->
                f.isTroubled()
                    ? f.trouble()
                    : f.hasNumber()
                        ? f.form()
                            + " "
                            + f.number().toPlainString()
                            + " +-"
                            + f.half().toPlainString()
                            + (f.rest().isEmpty() ? "" : " rest " + f.rest())
                        : f.form().name())
        .orElse("none");
  }
}
