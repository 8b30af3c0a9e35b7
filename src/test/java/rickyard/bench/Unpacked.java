package rickyard.bench;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The package as it is handed on, unpacked, with its launcher and the launcher's archive. */
final class Unpacked {
  private static final String DAY = "2026-03-16";

  private final Path work;
  private final Path launcher;

  private Unpacked(Path work, Path launcher) {
    this.work = work;
    this.launcher = launcher;
  }

  /** Unpacks the zip of a build folder into a folder and runs one morning for the archive. */
  static Unpacked of(Path target, Path work) throws IOException, InterruptedException {
    Path home = work.resolve("package");
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(zip(target)))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        unpack(zip, entry, home.resolve(entry.getName()));
      }
    }
    Path launcher = find(home, "rickyard");
    Files.setPosixFilePermissions(launcher, PosixFilePermissions.fromString("rwxr-xr-x"));
    Unpacked made = new Unpacked(work, launcher);
    Path first = Files.createDirectories(work.resolve("first"));
    Files.createDirectories(first.resolve("inbox"));
    Files.createDirectories(first.resolve("registers"));
    made.process().run(made.morning(first, "data,page"));
    return made;
  }

  private static void unpack(InputStream zip, ZipEntry entry, Path to) throws IOException {
    if (entry.isDirectory()) {
      Files.createDirectories(to);
    } else {
      Files.createDirectories(to.getParent());
      Files.copy(zip, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path zip(Path target) throws IOException {
    try (Stream<Path> files = Files.list(target)) {
      return files
          .filter(f -> f.getFileName().toString().matches("rickyard-.*\\.zip"))
          .max(Path::compareTo)
          .orElseThrow(() -> new IOException("no package; build it: mvn -q -DskipTests package"));
    }
  }

  private static Path find(Path home, String name) throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      return files.filter(f -> f.endsWith(Path.of("bin", name))).findFirst().orElseThrow();
    }
  }

  /** How its processes are run. */
  WholeProcess process() {
    return new WholeProcess(environment());
  }

  /** With an archive of their own and no text recogniser. */
  Map<String, String> environment() {
    return Map.of("RICKYARD_CACHE", work.resolve("cache").toString(), "RICKYARD_OCR", "none");
  }

  /** Any command of the program. */
  List<String> command(String... words) {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(words));
    return command;
  }

  /** The command of a morning. */
  List<String> morning(Path office, String outputs) {
    return List.of(
        launcher.toString(), "morning", office.toString(), "--as-of", DAY, "--outputs", outputs);
  }

  /** Java as it comes, for what ours is compared with. */
  List<String> java(String classPath, String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
    command.addAll(List.of("-XX:+UseSerialGC", "-Xlog:disable", "-cp", classPath));
    command.addAll(List.of(words));
    return command;
  }

  /** A program of the tests in a jar of its own: an archive of classes takes no folder. */
  Path jarOf(Class<?> program) throws IOException {
    Path jar = work.resolve(program.getSimpleName() + ".jar");
    String name = program.getName().replace('.', '/') + ".class";
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        InputStream in = program.getResourceAsStream("/" + name)) {
      out.putNextEntry(new ZipEntry(name));
      in.transferTo(out);
      out.closeEntry();
    }
    return jar;
  }

  Path jar() {
    return launcher.getParent().getParent().resolve("rickyard.jar");
  }

  /** All libraries of the package and this build's tests. */
  String classPath(Path target) {
    return jar() + File.pathSeparator + target.resolve("test-classes");
  }
}
