package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who asks for no workers has none of their classes to load. */
class NoWorkersIT {
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");

  @Test
  void aMorningThatReadsByItselfLoadsNoClassOfTheChannel(@TempDir Path folder) throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(OFFICE, office);
    Path loaded = folder.resolve("loaded.txt");

    BuiltJar.Ended ended =
        BuiltJar.run(
            List.of("-XX:TieredStopAtLevel=1", "-Xlog:class+load:file=" + loaded),
            List.of("morning", office.toString(), "--as-of", "2026-03-16", "--outputs", "data"));

    assertEquals(0, ended.status(), ended.output());
    String classes = Files.readString(loaded);
    assertTrue(classes.contains("rickyard.morning.MorningJob "), "the list is of this run");
    for (String foreign :
        List.of(
            "rickyard.morning.remote.",
            "org.springframework.integration.",
            "org.springframework.messaging.",
            "org.springframework.batch.integration.",
            "reactor.")) {
      assertFalse(classes.contains(" " + foreign), foreign);
    }
  }
}
