package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DurableFilesTest {
  @TempDir Path folder;

  private static DurableFiles.Content text(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aFileThatIsThereWithTheSameBytesIsNotTouched() throws IOException {
    Path file = folder.resolve("lots.csv");
    String first = DurableFiles.writeChanged(file, text("abc"));
    FileTime before = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(file, before);

    String again = DurableFiles.writeChanged(file, text("abc"));

    assertEquals(first, again);
    // FIPS 180-4, the example of one block.
    assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", again);
    assertEquals(before, Files.getLastModifiedTime(file));
    assertEquals(List.of("lots.csv"), names());
  }

  @Test
  void anotherContentTakesItsPlaceInOneStep() throws IOException {
    Path file = folder.resolve("lots.csv");
    DurableFiles.writeChanged(file, text("abc"));

    DurableFiles.writeChanged(file, text("abd"));

    assertEquals("abd", Files.readString(file));
    assertEquals(List.of("lots.csv"), names());
  }

  @Test
  void contentThatFailsOnTheWayLeavesTheOldFile() throws IOException {
    Path file = folder.resolve("lots.csv");
    DurableFiles.writeChanged(file, text("abc"));

    assertThrows(
        IOException.class,
        () ->
            DurableFiles.writeChanged(
                file,
                out -> {
                  out.write('x');
                  throw new IOException("no space");
                }));

    assertEquals("abc", Files.readString(file));
    assertEquals(List.of("lots.csv"), names());
  }

  @Test
  void aFailureOfAnyKindLeavesNoTemporaryName() throws IOException {
    Path file = folder.resolve("lots.csv");

    assertThrows(
        IllegalStateException.class,
        () ->
            DurableFiles.write(
                file,
                out -> {
                  throw new IllegalStateException("no such limit");
                }));

    assertEquals(List.of(), names());
  }

  @Test
  void aLinkIsReplacedAndNotFollowed() throws IOException {
    Path other = folder.resolve("other.txt");
    Files.writeString(other, "abc");
    Path file = folder.resolve("lots.csv");
    Files.createSymbolicLink(file, other);

    DurableFiles.writeChanged(file, text("abc"));

    assertEquals(false, Files.isSymbolicLink(file));
  }
}
