package rickyard.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cheap half of the hostile files among three good ones; {@code -P hostile} runs all. */
class HostileInboxIT {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");
  private static final int CHEAP = 100_000;

  @Test
  void eachHostileFileIsAccountedForAndCostsTheGoodOnesNothing(@TempDir Path folder)
      throws IOException {
    Paper paper = new Paper();
    List<HostileFile> files =
        HostileInbox.quick(paper).stream().filter(f -> f.bytes().length < CHEAP).toList();
    HostileRun alone = run(folder.resolve("alone"), List.of(), paper);
    HostileRun mixed = run(folder.resolve("mixed"), files, paper);

    assertTrue(files.size() >= 80, "only " + files.size() + " files");
    assertEquals(List.of(), mixed.complaints());
    assertEquals(List.of(), mixed.lostFrom(alone));
  }

  private static HostileRun run(Path office, List<HostileFile> files, Paper paper)
      throws IOException {
    return HostileRun.of(HostileInbox.of(OFFICE, office, files, paper.lots(), 1), 110);
  }
}
