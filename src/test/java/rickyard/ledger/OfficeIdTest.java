package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OfficeIdTest {
  @TempDir Path folder;

  @Test
  void anOfficeKeepsItsIdAndNoOtherHasIt() {
    String id = OfficeId.of(folder.resolve("a"));

    assertTrue(id.matches("[0-9a-f]{32}"), id);
    assertEquals(id, OfficeId.of(folder.resolve("a")));
    assertNotEquals(id, OfficeId.of(folder.resolve("b")));
  }

  @Test
  void aDamagedIdIsReplacedForGood() throws IOException {
    Files.writeString(folder.resolve("office-id"), "x; drop schema public");

    String id = OfficeId.of(folder);

    assertTrue(id.matches("[0-9a-f]{32}"), id);
    assertEquals(id, OfficeId.of(folder));
  }
}
