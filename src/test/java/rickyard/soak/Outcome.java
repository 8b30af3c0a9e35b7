package rickyard.soak;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.Originals;

/**
 * Every file that a run leaves under its final name: outputs, kept originals and journal, each by a
 * digest of its bytes. Only the timings of {@code run.json}, the part declared to differ, are left
 * out.
 */
final class Outcome {
  private static final List<String> KEPT =
      List.of("mornings", "ledger/originals", "ledger/journal");
  private static final Pattern TIMINGS = Pattern.compile("\"timings\"\\s*:\\s*\\{[^}]*}");

  /** Says how far the journal goes, and is replaced as it grows: right only once all is done. */
  private static final String HEAD = "ledger/journal/head.json";

  private final SortedMap<String, String> files;

  private Outcome(SortedMap<String, String> files) {
    this.files = files;
  }

  static Outcome of(Path office) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    for (String name : KEPT) {
      for (Path file : below(office.resolve(name))) {
        files.put(office.relativize(file).toString(), digest(file));
      }
    }
    return new Outcome(files);
  }

  int outputs() {
    return (int) files.keySet().stream().filter(f -> f.startsWith("mornings")).count();
  }

  /** The kept files by their paths in the office. */
  List<String> paths() {
    return List.copyOf(files.keySet());
  }

  /** Files of an interrupted office under their final names that are not what they should be. */
  List<String> torn(Path office) throws IOException {
    List<String> torn = new ArrayList<>();
    of(office).files.entrySet().stream()
        .filter(e -> !isTemporary(e.getKey()) && !e.getKey().equals(HEAD))
        .filter(e -> !e.getValue().equals(files.get(e.getKey())))
        .forEach(e -> torn.add(e.getKey()));
    return torn;
  }

  /** All that an office has otherwise: other bytes, missing, too many, temporary names left. */
  List<String> differences(Path office) throws IOException {
    Map<String, String> found = of(office).files;
    List<String> different = new ArrayList<>();
    files.forEach(
        (name, digest) -> {
          if (!digest.equals(found.get(name))) {
            different.add((found.containsKey(name) ? "other bytes: " : "missing: ") + name);
          }
        });
    found.keySet().stream()
        .filter(name -> !files.containsKey(name))
        .forEach(name -> different.add("too many: " + name));
    for (Path file : below(office)) {
      String name = office.relativize(file).toString();
      if (isTemporary(name) || name.startsWith("ledger/tmp/")) {
        different.add("left over: " + name);
      }
    }
    return different;
  }

  static boolean isTemporary(String name) {
    return name.endsWith(DurableFiles.TEMPORARY);
  }

  /** Sizes, times and bytes of all outputs: equal only if nothing was touched. */
  static Map<String, String> stamps(Path office) throws IOException {
    Map<String, String> stamps = new TreeMap<>();
    for (Path file : below(office.resolve("mornings"))) {
      stamps.put(
          office.relativize(file).toString(),
          Files.getLastModifiedTime(file) + " " + Originals.sha256(Files.readAllBytes(file)));
    }
    return stamps;
  }

  private static List<Path> below(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static String digest(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    if (String.valueOf(file.getFileName()).equals("run.json")) {
      String text = new String(bytes, StandardCharsets.UTF_8);
      bytes = TIMINGS.matcher(text).replaceFirst("").getBytes(StandardCharsets.UTF_8);
    }
    return Originals.sha256(bytes);
  }
}
