package rickyard.intake.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The short way to four digits writes what the long way writes. */
class SignificantDigitsPropertyTest {
  private static final long SEED = 20260316;

  private static void assertAsFormatted(double value) {
    assertEquals(
        String.format(Locale.ROOT, "%.4g", value),
        SignificantDigits.of(value),
        () -> "seed " + SEED + ", value " + value);
  }

  @Test
  void itWritesWhatTheFormatWrites() {
    Random random = new Random(SEED);
    for (int round = 0; round < 50_000; round++) {
      double scale = StrictMath.pow(10, random.nextInt(14) - 6);
      assertAsFormatted(random.nextDouble() * scale);
      assertAsFormatted(random.nextInt(200_000) / 2.0 * scale / 1_000);
    }
  }

  @Test
  void edgesAreWrittenAsTheFormatWritesThem() {
    for (double value :
        new double[] {
          0, 0.001, 0.00099995, 0.0099995, 0.99995, 9.9995, 9999, 9999.4, 9999.5, 99_999, 1, 10, 100
        }) {
      assertAsFormatted(value);
    }
    assertEquals("open", SignificantDigits.of(Double.POSITIVE_INFINITY));
  }
}
