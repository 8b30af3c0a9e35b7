package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The package as it is handed on, unpacked and started as a user would. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final String DAY = "2026-03-16";
  private static final Path OFFICE = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir static Path shared;
  private static Path program = Path.of("");

  @BeforeAll
  static void unpack() throws IOException {
    Path home = shared.resolve("the program");
    Path zip;
    try (Stream<Path> files = Files.list(BuiltJar.path().getParent())) {
      zip =
          files
              .filter(f -> f.getFileName().toString().matches("rickyard-[0-9.]+(-SNAPSHOT)?\\.zip"))
              .findFirst()
              .orElseThrow();
    }
    try (ZipFile file = ZipFile.builder().setPath(zip).get()) {
      for (ZipArchiveEntry entry : java.util.Collections.list(file.getEntries())) {
        Path target = home.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(target);
          continue;
        }
        Files.createDirectories(target.getParent());
        try (InputStream in = file.getInputStream(entry)) {
          Files.copy(in, target);
        }
        if ((entry.getUnixMode() & 0111) != 0) {
          Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
      }
    }
    try (Stream<Path> files = Files.walk(home)) {
      program = files.filter(f -> f.endsWith(Path.of("bin", "rickyard"))).findFirst().orElseThrow();
    }
  }

  private static BuiltJar.Ended run(Path start, Path cache, String... arguments)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(start.toString()));
    words.addAll(List.of(arguments));
    Path log = Files.createTempFile(shared, "run", ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile());
    Map<String, String> environment = builder.environment();
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.put("RICKYARD_CACHE", cache.toString());
    Process process = builder.start();
    assertTrue(process.waitFor(3, TimeUnit.MINUTES), "ends");
    return new BuiltJar.Ended(process.exitValue(), Files.readString(log, StandardCharsets.UTF_8));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  private static BuiltJar.Ended morning(Path office, Path cache)
      throws IOException, InterruptedException {
    BuiltJar.copy(OFFICE, office);
    return run(
        program, cache, "morning", office.toString(), "--as-of", DAY, "--outputs", "data,page");
  }

  @Test
  void theFirstMorningMakesTheArchiveAndTheNextUsesItAndSaysTheSame(@TempDir Path folder)
      throws Exception {
    Path cache = folder.resolve("the cache");

    BuiltJar.Ended first = morning(folder.resolve("first"), cache);

    assertEquals(0, first.status(), first.output());
    assertFalse(first.output().contains("WARNING"), first.output());
    List<String> made = names(cache);
    assertEquals(1, made.size(), made.toString());
    assertTrue(made.get(0).matches("classes-[0-9.]+(-SNAPSHOT)?-[0-9]+\\.jsa"), made.toString());
    assertSame(folder, "second", first, cache);
    // One that is broken costs nothing but time.
    Files.writeString(cache.resolve(made.get(0)), "no archive");
    assertSame(folder, "third", first, cache);
  }

  private static void assertSame(Path folder, String name, BuiltJar.Ended first, Path cache)
      throws Exception {
    BuiltJar.Ended ended = morning(folder.resolve(name), cache);
    assertEquals(0, ended.status(), ended.output());
    assertEquals(
        first.output().replace(folder.resolve("first").toString(), "OFFICE"),
        ended.output().replace(folder.resolve(name).toString(), "OFFICE"));
    assertEquals(
        BuiltJar.contents(folder.resolve("first/mornings")),
        BuiltJar.contents(folder.resolve(name).resolve("mornings")));
  }

  @Test
  void withoutAPlaceForTheArchiveAndThroughALinkItStartsToo(@TempDir Path folder) throws Exception {
    Path link = folder.resolve("rickyard");
    Files.createSymbolicLink(link, program);
    Path file = folder.resolve("no folder");
    Files.writeString(file, "");

    BuiltJar.Ended help = run(link, file.resolve("cache"), "--help");
    BuiltJar.Ended wrong = run(link, file.resolve("cache"), "morning", "nowhere");

    assertEquals(0, help.status(), help.output());
    assertTrue(help.output().contains("Usage: rickyard"), help.output());
    assertEquals(2, wrong.status(), wrong.output());
    assertFalse(wrong.output().contains("cache"), wrong.output());
  }

  @Test
  void withoutAnyJavaItSaysSo(@TempDir Path folder) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder("/bin/sh", program.toString(), "--help").redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", folder.toString());
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertEquals(1, process.waitFor());
    assertEquals("rickyard: no Java found; install Java 17 or later, or set JAVA_HOME.\n", said);
  }
}
