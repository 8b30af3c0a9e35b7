package rickyard.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * All hostile files among the demo office's reports, in several shuffles: {@code mvn -P hostile
 * verify}. What came of each kind is written to {@code target/hostile-outcomes.md}.
 */
class HostileMornings {
  private static final Path OFFICE = Path.of("fixtures", "office");
  private static final int SHUFFLES = Integer.getInteger("rickyard.shuffles", 3);
  private static final long PATIENCE_SECONDS = 1800;

  @Test
  void noShuffleOfHostileFilesChangesAGoodRow(@TempDir Path folder) throws IOException {
    Paper paper = new Paper();
    // The demo office has an empty file of its own: two would be one and its double.
    List<HostileFile> files =
        HostileInbox.all(paper).stream().filter(f -> f.bytes().length > 0).toList();
    HostileRun alone = run(folder.resolve("alone"), List.of(), paper, 0);
    List<String> told = new ArrayList<>();
    Map<String, String> outcomes = new TreeMap<>();
    for (int seed = 1; seed <= SHUFFLES; seed++) {
      HostileRun mixed = run(folder.resolve("mixed-" + seed), files, paper, seed);
      told.add("shuffle " + seed + ": " + mixed.seconds() + " s, alone " + alone.seconds() + " s");
      outcomes.putAll(mixed.outcomes());
      write(told, outcomes);
      assertEquals(List.of(), mixed.complaints());
      assertEquals(List.of(), mixed.lostFrom(alone));
    }
  }

  private static HostileRun run(Path office, List<HostileFile> files, Paper paper, long seed)
      throws IOException {
    return HostileRun.of(
        HostileInbox.of(OFFICE, office, files, paper.lots(), seed), PATIENCE_SECONDS);
  }

  private static void write(List<String> told, Map<String, String> outcomes) throws IOException {
    StringBuilder out = new StringBuilder();
    told.forEach(line -> out.append(line).append('\n'));
    outcomes.forEach((file, what) -> out.append(file.replace("\n", "\\n") + ": " + what + "\n"));
    Files.writeString(Path.of("target", "hostile-outcomes.md"), out.toString());
  }
}
