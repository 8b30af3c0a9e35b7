package rickyard.second;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;

/** Seeded draws. */
final class Draws {
  private final Random random;

  Draws(long seed) {
    this.random = new Random(seed);
  }

  boolean chance(double p) {
    return random.nextDouble() < p;
  }

  <T> T of(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  int whole(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  /** A number with so many decimals, never below the smallest that can be printed. */
  String printed(double low, double high, int decimals) {
    BigDecimal least = BigDecimal.ONE.movePointLeft(decimals);
    BigDecimal drawn =
        BigDecimal.valueOf(between(low, high)).setScale(decimals, RoundingMode.HALF_EVEN);
    return drawn.max(least).toPlainString();
  }
}
