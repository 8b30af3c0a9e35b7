package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChanceTest {
  @ParameterizedTest
  @CsvSource({
    "0, less than 0.1 %",
    "1e-12, less than 0.1 %",
    "0.00099, less than 0.1 %",
    "0.001, 0.1 %",
    "0.0149, 1.5 %",
    "0.0999, 10 %",
    "0.1, 10 %",
    "0.104, 10 %",
    "0.105, 11 %",
    "0.5, 50 %",
    "0.9899, 99 %",
    "0.99, 99 %",
    "0.9949, 99.5 %",
    "0.9989, 99.9 %",
    "0.99901, more than 99.9 %",
    "1, more than 99.9 %"
  })
  void neverSaysNoneOrAll(double chance, String words) {
    assertEquals(words, Chance.words(chance));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, 1.0000001, Double.NaN, Double.POSITIVE_INFINITY})
  void takesChancesOnly(double wrong) {
    assertThrows(IllegalArgumentException.class, () -> Chance.words(wrong));
  }

  @Test
  void aLargerChanceIsNeverSaidToBeSmaller() {
    double before = -1;
    for (int i = 0; i <= 100_000; i++) {
      String words = Chance.words(i / 100_000.0);
      double said =
          Double.parseDouble(words.replaceAll("[^0-9.]", "")) + (words.startsWith("more") ? 1 : 0);
      said = words.startsWith("less") ? 0 : said;
      org.junit.jupiter.api.Assertions.assertTrue(said >= before, words);
      before = said;
    }
  }
}
