package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNumberTest {
  @ParameterizedTest
  @CsvSource({
    "0,0",
    "-0.0,0",
    "9.4,9.4",
    "10,10",
    "1000,1000",
    "1e21,1000000000000000000000",
    "10.454545454545455,10.454545",
    "1.0000005,1.000001",
    "-1.0000005,-1.000001",
    "0.0505,0.0505",
    "0.000123456789,0.000123457",
    "1e-7,0.0000001",
    "1e-20,0",
    "0.9999999,1",
    "123456789.123,123456789.123"
  })
  void writesPlainDigitsRoundedHalfUp(double number, String expected) {
    assertEquals(expected, PlainNumber.of(number));
  }

  @Test
  void leavesBlankWhatIsNotANumber() {
    assertEquals("", PlainNumber.of(null));
    assertEquals("", PlainNumber.of(Double.NaN));
    assertEquals("", PlainNumber.of(Double.POSITIVE_INFINITY));
  }

  @Test
  void readsBackWithinHalfTheLastDigit() {
    long seed = 7;
    Random random = new Random(seed);
    for (int i = 0; i < 20_000; i++) {
      double number = (random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(14) - 6);
      String text = PlainNumber.of(number);
      assertTrue(text.matches("-?\\d+(\\.\\d*[1-9])?"), text);
      double error = Math.abs(Double.parseDouble(text) - number);
      double allowed =
          Math.abs(number) >= 1 ? 0.5e-6 : Math.max(0.5e-12, Math.abs(number) * 0.5e-5);
      assertTrue(error <= allowed * (1 + 1e-3), "seed " + seed + ": " + number + " as " + text);
    }
  }
}
