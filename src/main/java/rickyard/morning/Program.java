package rickyard.morning;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.ZipFile;
import rickyard.ledger.Originals;

/** Which program this is: its version, and a digest of its code that tells two builds apart. */
public final class Program {
  private Program() {}

  /** The version of the build; {@code development} when it does not run from a jar. */
  public static String version() {
    return Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
        .orElse("development");
  }

  /** Version and digest of the jar; two jars of the same bytes give the same text. */
  static String identity() {
    return Known.IDENTITY;
  }

  /** Looked up once: no morning changes the program that runs it. */
  private static final class Known {
    static final String IDENTITY =
        version() + " " + jar().map(Program::digest).orElse("development");
  }

  private static Optional<Path> jar() {
    CodeSource source = Program.class.getProtectionDomain().getCodeSource();
    if (source == null || source.getLocation() == null) {
      return Optional.empty();
    }
    try {
      Path path = Path.of(source.getLocation().toURI());
      return Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  /** Over name, size and checksum of every file in it, which the jar has ready. */
  private static String digest(Path jar) {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      String files =
          zip.stream()
              .map(file -> file.getName() + " " + file.getSize() + " " + file.getCrc())
              .sorted()
              .collect(Collectors.joining("\n"));
      return Originals.sha256(files.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      return "unreadable";
    }
  }
}
