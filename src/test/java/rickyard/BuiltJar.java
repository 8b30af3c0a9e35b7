package rickyard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import rickyard.ledger.TestIndex;

/** Starts the built jar as a process of its own, as a person would. */
public final class BuiltJar {
  private static final long PATIENCE_SECONDS = 120;

  private BuiltJar() {}

  /** What a run printed and how it ended. */
  public record Ended(int status, String output) {}

  /** The jar. */
  public static Path path() {
    return Path.of(System.getProperty("rickyard.jar", "target/rickyard.jar")).toAbsolutePath();
  }

  /**
   * What makes a short run cheap and changes no byte of it: the quick compiler, the simple
   * collector and an archive of loaded classes, made as the launcher makes it, from which the
   * children start as well. With other classes than the archive's Java goes on without it.
   */
  public static synchronized List<String> quick() {
    Path archive = path().resolveSibling("rickyard-test.jsa");
    List<String> words =
        new ArrayList<>(
            List.of(
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xlog:cds=off"));
    // Another test process may want it at the same time: it waits, and finds it made.
    try (FileChannel lock =
            FileChannel.open(
                archive.resolveSibling("rickyard-test.lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        FileLock held = lock.lock()) {
      if (held.isValid() && !isNewer(archive, path())) {
        makeArchive(archive, words);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    words.addAll(List.of("-XX:SharedArchiveFile=" + archive, "-Drickyard.classes=" + archive));
    return words;
  }

  private static boolean isNewer(Path file, Path than) throws IOException {
    return Files.exists(file)
        && Files.getLastModifiedTime(file).compareTo(Files.getLastModifiedTime(than)) >= 0;
  }

  private static void makeArchive(Path archive, List<String> words) throws IOException {
    Path folder = Files.createTempDirectory("rickyard-archive");
    Path made = archive.resolveSibling("rickyard-test-made.jsa");
    List<String> command = new ArrayList<>(List.of(java()));
    command.addAll(words);
    command.addAll(List.of("-XX:ArchiveClassesAtExit=" + made, "-cp", path().toString()));
    command.addAll(List.of("rickyard.cli.ClassTraining", folder.toString()));
    Path log = archive.resolveSibling("rickyard-test-archive.txt");
    Ended ended = ended(builder(command, log).start(), log);
    if (ended.status() != 0) {
      throw new IllegalStateException("no archive of classes: " + ended.output());
    }
    Files.move(made, archive, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private static ProcessBuilder builder(List<String> command, Path log) {
    return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
  }

  /** Starts it; what it prints goes to a file. */
  public static Process start(List<String> jvm, List<String> arguments, Path log)
      throws IOException {
    List<String> command = new ArrayList<>(List.of(java()));
    command.addAll(jvm);
    command.add("-jar");
    command.add(path().toString());
    command.addAll(arguments);
    ProcessBuilder builder = builder(command, log);
    if (TestIndex.isOnServer()) {
      builder.environment().putIfAbsent("RICKYARD_LEDGER", TestIndex.url());
    }
    return builder.start();
  }

  /** Runs it to its end. */
  public static Ended run(List<String> jvm, List<String> arguments) throws IOException {
    Path log = Files.createTempFile("rickyard-run", ".txt");
    try {
      return ended(start(jvm, arguments, log), log);
    } finally {
      Files.deleteIfExists(log);
    }
  }

  private static Ended ended(Process process, Path log) throws IOException {
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("did not end: " + Files.readString(log));
      }
      return new Ended(process.exitValue(), Files.readString(log, StandardCharsets.UTF_8));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** Runs it to its end. */
  public static Ended run(String... arguments) throws IOException {
    return run(List.of(), List.of(arguments));
  }

  /** All files below a folder with their bytes as text, run.json left out: it holds timings. */
  public static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(Files::isRegularFile)
          .filter(f -> !f.getFileName().toString().equals("run.json"))
          .forEach(f -> found.put(folder.relativize(f).toString().replace('\\', '/'), text(f)));
    }
    return found;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Copies a folder with everything in it. */
  public static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }
}
