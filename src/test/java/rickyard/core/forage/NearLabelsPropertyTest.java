package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Looking a label up finds what comparing it with every id finds. Seeded. */
class NearLabelsPropertyTest {
  private static final long SEED = 20261126L;
  private static final String SIGNS = "ABOIL015N2 -/,";

  private static String label(Random random) {
    int length = 1 + random.nextInt(9);
    return random
        .ints(length, 0, SIGNS.length())
        .mapToObj(i -> String.valueOf(SIGNS.charAt(i)))
        .collect(Collectors.joining())
        .strip();
  }

  /** One slip of somebody who copies a label: left out, doubled, other, exchanged, more words. */
  private static String slipped(String id, Random random) {
    int at = random.nextInt(id.length());
    String head = id.substring(0, at);
    String tail = id.substring(at + 1);
    char own = id.charAt(at);
    return switch (random.nextInt(6)) {
      case 0 -> head + tail;
      case 1 -> head + own + own + tail;
      case 2 -> head + 'X' + tail;
      case 3 -> tail.isEmpty() ? id : head + tail.charAt(0) + own + tail.substring(1);
      case 4 -> "lot " + id + " north";
      default -> id.toLowerCase(java.util.Locale.ROOT);
    };
  }

  @Test
  void whatIsLookedUpIsWhatComparingFinds() {
    Random random = new Random(SEED);
    int near = 0;
    for (int round = 0; round < 300; round++) {
      List<String> ids = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        ids.add(label(random));
      }
      ids.removeIf(String::isEmpty);
      ids.add("A".repeat(58) + label(random));
      NearLabels labels = new NearLabels(ids);
      for (int i = 0; i < 40; i++) {
        String label = i % 2 == 0 ? label(random) : slipped(ids.get(i % ids.size()), random);
        List<String> compared =
            ids.stream()
                .filter(id -> NearLabels.near(label, id).isPresent())
                .distinct()
                .sorted()
                .toList();
        List<String> lookedUp =
            labels.among(label).stream()
                .filter(id -> NearLabels.near(label, id).isPresent())
                .toList();
        assertEquals(compared, lookedUp, "seed " + SEED + ", round " + round + ": " + label);
        near += compared.size();
      }
    }
    assertTrue(near > 5_000, "too few near labels to say anything: " + near);
  }
}
