package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamePropertyTest {
  private static final long SEED = 20261126L;
  private static final int TRIES = 20_000;
  private static final String LETTERS =
      "aAbBcConNpPrRxX0123456789+=-_. /\\:*?<>|\"éÉİıß\ud83d\udc34";
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com1", "lpt9");

  @ParameterizedTest
  @CsvSource({
    "comet,comet",
    "HAV-1,+hav-1",
    "H-12,+h-12",
    "Bella,+b+ella",
    "con,=0063on",
    "CON,+con",
    "COM1,+com1",
    "com1,=0063om1",
    "a.b,a=002eb",
    "-rf,=002drf"
  })
  void aNameIsReadable(String id, String expected) {
    assertEquals(expected, FileName.of(id));
  }

  @Test
  void noTwoIdsGiveOneNameOnAnyDisk() {
    Random random = new Random(SEED);
    Map<String, String> ids = new HashMap<>();
    for (int i = 0; i < TRIES; i++) {
      String id = id(random);
      String name = FileName.of(id);
      String about = "seed " + SEED + ", try " + i + ": " + id;
      assertTrue(name.matches("[a-z0-9+=_-]{1,100}"), about);
      assertEquals(name, name.toLowerCase(Locale.ROOT), about);
      assertTrue(!DEVICES.contains(name) && !name.startsWith("-"), about);
      String other = ids.put(name, id);
      assertTrue(other == null || other.equals(id), about + " and " + other);
      if (!name.contains("=x")) {
        assertEquals(id.isEmpty() ? "=none" : id, id.isEmpty() ? name : read(name), about);
      }
    }
  }

  @Test
  void longIdsThatDifferAtTheEndDiffer() {
    String stem = "long-name-".repeat(30);
    Map<String, String> names = new HashMap<>();
    for (String end : List.of("a", "b", "A", "", ".")) {
      assertNull(names.put(FileName.of(stem + end), end));
    }
  }

  private static String id(Random random) {
    StringBuilder id = new StringBuilder();
    int length = random.nextInt(random.nextInt(20) == 0 ? 200 : 6);
    for (int i = 0; i < length; i++) {
      id.append(
          random.nextInt(9) == 0
              ? (char) random.nextInt(0x10000)
              : LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return id.toString();
  }

  /** Reads a name back: what can be read back cannot be shared. */
  private static String read(String name) {
    StringBuilder id = new StringBuilder();
    boolean capitals = false;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c == '+') {
        capitals = !capitals;
      } else if (c == '=') {
        id.append((char) Integer.parseInt(name.substring(i + 1, i + 5), 16));
        i += 4;
      } else {
        id.append(capitals ? Character.toUpperCase(c) : c);
      }
    }
    return id.toString();
  }
}
