package rickyard.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rickyard.BuiltJar;

/** The demo's morning, made once by the built program for all browser tests of a process. */
final class Demo {
  private static final Path FOLDER = make();

  private Demo() {}

  private static Path make() {
    try {
      Path folder = Files.createTempDirectory("rickyard-browser");
      BuiltJar.Ended ended = BuiltJar.run("demo", "--out", folder.toString());
      if (ended.status() != 0) {
        throw new IllegalStateException(ended.output());
      }
      return folder.resolve("office/mornings/2026-03-16");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of the morning's files. */
  static Path file(String name) {
    return FOLDER.resolve(name);
  }

  /** All of the morning's files below a folder, in order. */
  static List<Path> files(String below) throws IOException {
    try (Stream<Path> all = Files.list(FOLDER.resolve(below))) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
