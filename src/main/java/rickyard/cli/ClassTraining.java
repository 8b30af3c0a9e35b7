package rickyard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.isolate.ChildSetup;
import rickyard.intake.isolate.Rehearsal;
import rickyard.tables.DictionaryTables;

/**
 * Does once whatever a morning may do, so that Java can keep the classes in an archive: the demo
 * with all its outputs, a morning on which nothing is new, and reports read in this process too.
 * The launchers start it; it is no command.
 */
public final class ClassTraining {
  private ClassTraining() {}

  /**
   * Runs the demo in a folder.
   *
   * @param args the folder
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Path office = folder.resolve("office");
    int status = Rickyard.run(List.of("demo", "--out", folder.toString()));
    if (status == Rickyard.DONE) {
      String day = only(office.resolve("mornings")).getFileName().toString();
      status = Rickyard.run(List.of("morning", office.toString(), "--as-of", day));
      ChildSetup setup =
          new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT);
      Rehearsal.read(setup, inbox(office));
    }
    System.exit(status);
  }

  private static Path only(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.findFirst().orElseThrow();
    }
  }

  private static List<Path> inbox(Path office) throws IOException {
    try (Stream<Path> files = Files.list(office.resolve("inbox"))) {
      return files.sorted().toList();
    }
  }
}
