package rickyard.morning;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.MorningRow;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Which files a morning published, with their hashes, as {@code run.json} keeps them.
 *
 * @param files hash by path relative to the output folder, {@code /} between names
 */
record Manifest(SortedMap<String, String> files) {
  static final String RUN = "run.json";
  private static final JsonMapper JSON = JsonMapper.builder().build();

  Manifest {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** The manifest of the folder's run.json; empty if there is none that can be read. */
  static Optional<Manifest> read(Path out) {
    SortedMap<String, String> found = new TreeMap<>();
    json(out)
        .ifPresent(
            run ->
                run.path("files")
                    .properties()
                    .forEach(e -> found.put(e.getKey(), e.getValue().asString())));
    return found.isEmpty() ? Optional.empty() : Optional.of(new Manifest(found));
  }

  private static Optional<JsonNode> json(Path out) {
    Path run = out.resolve(RUN);
    if (!Files.isRegularFile(run, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      return Optional.of(JSON.readTree(Files.readString(run, StandardCharsets.UTF_8)));
    } catch (IOException | JacksonException e) {
      return Optional.empty();
    }
  }

  /** Whether a folder holds exactly what a morning published. */
  static boolean isWholeOf(Path out, MorningRow morning) {
    return json(out).filter(run -> RunJson.isOf(run, morning)).isPresent()
        && read(out).filter(manifest -> manifest.isWhole(out)).isPresent();
  }

  /** Whether every file is there with its hash. */
  boolean isWhole(Path out) {
    return files.entrySet().stream()
        .allMatch(e -> DurableFiles.isThere(out.resolve(e.getKey()), e.getValue()));
  }
}
