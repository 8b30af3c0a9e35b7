package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plain text is cut into the same words the quick way as the careful way. */
class WordsPropertyTest {
  private static final int TEXTS = 100_000;
  private static final int LONGEST = 14;
  private static final String SIGNS = "abzXYZ0129 %+-_/,;:'\"!?<=>@|~{}\\`$\t\n*#^()[].&é²";

  @Test
  void theQuickWayChangesNothing() {
    Random random = new Random(41);
    for (int i = 0; i < TEXTS; i++) {
      StringBuilder text = new StringBuilder();
      for (int left = random.nextInt(LONGEST); left > 0; left--) {
        text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
      }
      String one = text.toString();
      assertEquals(Words.careful(one), Words.of(one), one);
    }
    assertEquals(List.of("ndf", "+", "ash", "30", "h", "%"), Words.of("NDF+ash 30-h %"));
  }
}
