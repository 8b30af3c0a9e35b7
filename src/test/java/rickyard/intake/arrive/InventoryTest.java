package rickyard.intake.arrive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.intake.grid.ReadLimits;

class InventoryTest {
  @TempDir Path folder;

  private void put(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Inventory freeze() throws IOException {
    return Inventory.freeze(folder, ReadLimits.DEFAULT);
  }

  private static String code(Arrival arrival) {
    return arrival.problem().map(Arrival.Problem::code).orElse("fine");
  }

  private static List<String> listed(Inventory inventory) {
    return inventory.arrivals().stream().map(a -> a.relativePath() + " " + code(a)).toList();
  }

  @Test
  void anEmptyFolderThatIsCalledLikeAFileIsListed() throws IOException {
    Files.createDirectories(folder.resolve("empty.pdf"));
    Files.createDirectories(folder.resolve("old"));
    put("full.pdf/a.csv", "a");

    assertEquals(List.of("empty.pdf not-a-file", "full.pdf/a.csv fine"), listed(freeze()));
  }

  @Test
  void everythingIsListedInCodePointOrder() throws IOException {
    put("b.csv", "b");
    put("a/z.csv", "z");
    put("a.csv", "a");
    put("B.csv", "B");
    put("\uFF21.csv", "wide");
    put("\uD83D\uDC34.csv", "horse");
    put("é.csv", "e");
    assertEquals(
        List.of(
            "B.csv fine",
            "a.csv fine",
            "a/z.csv fine",
            "b.csv fine",
            "é.csv fine",
            "\uFF21.csv fine",
            "\uD83D\uDC34.csv fine"),
        listed(freeze()));
  }

  @Test
  void hashesAreThoseOfTheBytes() throws IOException {
    put("abc.csv", "abc");
    Arrival arrival = freeze().arrivals().get(0);
    // FIPS 180-2, appendix B.1: the message "abc".
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", arrival.sha256());
    assertEquals(3, arrival.bytesSize());
  }

  @Test
  void whatProgramsLeaveBehindIsListedButNotRead() throws IOException {
    put(".DS_Store", "x");
    put("~$report.xlsx", "x");
    put("sub/Thumbs.db", "x");
    put(".git/config", "x");
    put("half.csv.part", "x");
    assertEquals(
        List.of(
            ".DS_Store not-a-report",
            ".git/config not-a-report",
            "half.csv.part not-a-report",
            "sub/Thumbs.db not-a-report",
            "~$report.xlsx not-a-report"),
        listed(freeze()));
  }

  @Test
  void linksAreNotFollowed() throws IOException {
    put("real.csv", "x");
    Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("real.csv"));
    Files.createSymbolicLink(folder.resolve("loop"), folder);
    assertEquals(List.of("link.csv link", "loop link", "real.csv fine"), listed(freeze()));
  }

  @Test
  void aPipeDoesNotHangTheMorning() throws Exception {
    Process made;
    try {
      made = new ProcessBuilder("mkfifo", folder.resolve("pipe.pdf").toString()).start();
    } catch (IOException noSuchTool) {
      Assumptions.abort("no mkfifo on this system");
      return;
    }
    Assumptions.assumeTrue(made.waitFor(10, TimeUnit.SECONDS) && made.exitValue() == 0);
    put("a.csv", "x");
    List<String> listed = assertTimeoutPreemptively(Duration.ofSeconds(10), () -> listed(freeze()));
    assertEquals(List.of("a.csv fine", "pipe.pdf not-a-file"), listed);
  }

  @Test
  void aFolderNamedLikeAFileIsAFolder() throws IOException {
    put("x.pdf/inside.csv", "x");
    assertEquals(List.of("x.pdf/inside.csv fine"), listed(freeze()));
  }

  @Test
  void whatIsTooLargeIsListed() throws IOException {
    put("a.csv", "x".repeat(11));
    ReadLimits tight = new ReadLimits(10, 1, 1, 1, 1, 1, 1, 1, 1);
    assertEquals(List.of("a.csv too-large"), listed(Inventory.freeze(folder, tight)));
  }

  @Test
  void readingAgainChecksTheHash() throws IOException {
    put("a.csv", "one");
    Inventory inventory = freeze();
    Arrival arrival = inventory.arrivals().get(0);
    byte[] bytes = inventory.read(arrival, b -> b, p -> new byte[0]);
    assertArrayEquals(new byte[] {'o', 'n', 'e'}, bytes);
    put("a.csv", "two");
    assertEquals("changed-while-read", inventory.read(arrival, b -> "read", p -> p.code()));
    Files.delete(folder.resolve("a.csv"));
    assertEquals("removed", inventory.read(arrival, b -> "read", p -> p.code()));
  }

  @Test
  void theDigestFollowsTheContent() throws IOException {
    put("a.csv", "one");
    String before = freeze().digest();
    assertEquals(before, freeze().digest());
    put("a.csv", "two");
    assertNotEquals(before, freeze().digest());
  }

  @Test
  void anInboxThatIsNotThereIsAnError() {
    assertThrows(
        IOException.class, () -> Inventory.freeze(folder.resolve("nowhere"), ReadLimits.DEFAULT));
  }

  @Test
  void aFileThatGrowsIsNotHalfRead() throws Exception {
    Path file = folder.resolve("grows.csv");
    Files.writeString(file, "x".repeat(1 << 20));
    Thread writer =
        new Thread(
            () -> {
              try {
                for (int i = 0; i < 2000; i++) {
                  Files.writeString(file, "y", java.nio.file.StandardOpenOption.APPEND);
                }
              } catch (IOException stop) {
                throw new java.io.UncheckedIOException(stop);
              }
            });
    writer.start();
    for (int round = 0; round < 20; round++) {
      Arrival arrival = freeze().arrivals().get(0);
      boolean whole = arrival.problem().isEmpty() && arrival.sha256().length() == 64;
      assertTrue(whole || code(arrival).equals("changed-while-read"), code(arrival));
    }
    writer.join();
    assertEquals("fine", code(freeze().arrivals().get(0)));
  }
}
