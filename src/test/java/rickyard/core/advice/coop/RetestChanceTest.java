package rickyard.core.advice.coop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RetestChanceTest {
  private static final int DRAWS = 200_000;

  /** Draws the hay, then the second test, and combines as two tests of a lot are combined. */
  private static double drawn(double y, double u, double v, double threshold) {
    Random random = new Random(41);
    int cleared = 0;
    for (int i = 0; i < DRAWS; i++) {
      double hay = y + u * random.nextGaussian();
      double second = hay + v * random.nextGaussian();
      boolean agree = Math.abs(second - y) <= 2 * Math.sqrt(u * u + v * v);
      double mean = (y / (u * u) + second / (v * v)) / (1 / (u * u) + 1 / (v * v));
      cleared += agree && mean <= threshold ? 1 : 0;
    }
    return (double) cleared / DRAWS;
  }

  @ParameterizedTest
  @CsvSource({
    "10.4, 1.9, 0.9, 8.7",
    "9.4, 1.9, 0.9, 8.7",
    "13.0, 1.9, 0.9, 8.7",
    "8.5, 1.0, 1.0, 8.8",
    "9.0, 2.0, 0.5, 11.5",
    "10.4, 1.9, 3.0, 8.7"
  })
  void equalsTheShareOfDrawsThatClear(double y, double u, double v, double threshold) {
    double chance = RetestChance.atMost(y, u, v, threshold);

    double error = 4 * Math.sqrt(Math.max(1e-5, chance * (1 - chance)) / DRAWS);
    assertEquals(drawn(y, u, v, threshold), chance, error);
  }

  @Test
  void aFigureThatIsFarOverCanOnlyDisagree() {
    assertEquals(0, RetestChance.atMost(20, 1, 1, 9));
  }

  @Test
  void aSurerTestNearTheThresholdClearsLessOftenTheFurtherOverTheFirstWas() {
    double before = 1;
    for (double y = 7; y < 14; y += 0.25) {
      double chance = RetestChance.atMost(y, 1.9, 0.9, 8.7);
      assertTrue(chance <= before);
      before = chance;
    }
  }

  @Test
  void bothTestsTogetherAreSurerThanEither() {
    assertEquals(1 / Math.sqrt(1 / 4.0 + 1 / 9.0), RetestChance.combinedU(2, 3), 1e-12);
  }
}
