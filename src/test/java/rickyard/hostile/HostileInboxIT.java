package rickyard.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every third of the small hostile files among three good ones: at least some of every kind are
 * accounted for and cost the good ones nothing. {@code -P hostile} runs all.
 */
class HostileInboxIT {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");
  private static final int CHEAP = 100_000;
  private static final long PATIENCE_SECONDS = 300;

  @Test
  void eachHostileFileIsAccountedForAndCostsTheGoodOnesNothing(@TempDir Path folder)
      throws IOException {
    Paper paper = new Paper();
    List<HostileFile> small =
        HostileInbox.quick(paper).stream().filter(f -> f.bytes().length < CHEAP).toList();
    List<HostileFile> files =
        IntStream.range(0, small.size()).filter(i -> i % 3 == 0).mapToObj(small::get).toList();
    HostileRun alone = run(folder.resolve("alone"), List.of(), paper);
    HostileRun mixed = run(folder.resolve("mixed"), files, paper);

    assertTrue(files.size() >= 40, "only " + files.size() + " files");
    assertEquals(kinds(small), kinds(files));
    assertEquals(List.of(), mixed.complaints());
    assertEquals(List.of(), mixed.lostFrom(alone));
  }

  private static Set<String> kinds(List<HostileFile> files) {
    return files.stream().map(HostileFile::kind).collect(Collectors.toSet());
  }

  private static HostileRun run(Path office, List<HostileFile> files, Paper paper)
      throws IOException {
    return HostileRun.of(HostileInbox.of(OFFICE, office, files, paper.lots(), 1), PATIENCE_SECONDS);
  }
}
