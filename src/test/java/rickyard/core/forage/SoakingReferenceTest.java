package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What a loss of sugar does to the content, against calculated oracles. */
class SoakingReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/soaking.csv", useHeadersInDisplayName = true)
  void theContentFallsByLessThanTheLoss(
      double before,
      Double loss,
      Double after,
      Double target,
      Double needed,
      double tolerance,
      String source) {
    if (loss != null) {
      assertEquals(after, Soaking.after(before, loss), tolerance, source);
    } else {
      double found = Soaking.lossNeeded(before, target);
      assertEquals(needed, 100 * found, tolerance, source);
      assertEquals(target, Soaking.after(before, found), 1e-12, source);
    }
  }

  @Test
  void theEndsAreSound() {
    assertEquals(0, Soaking.lossNeeded(10, 10));
    assertEquals(1, Soaking.lossNeeded(10, 0), 1e-12);
    assertEquals(12, Soaking.after(12, 0), 1e-12);
    assertEquals(0, Soaking.after(12, 1));
    assertEquals(0, Soaking.after(100, 1));
    assertThrows(IllegalArgumentException.class, () -> Soaking.lossNeeded(9, 10));
    assertThrows(IllegalArgumentException.class, () -> Soaking.after(12, 1.1));
    assertThrows(IllegalArgumentException.class, () -> Soaking.after(101, 0.1));
  }
}
