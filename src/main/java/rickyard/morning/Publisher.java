package rickyard.morning;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.LedgerException;
import rickyard.report.OutputFile;

/**
 * Puts a morning's outputs into their folder: each file whole under a temporary name, then renamed;
 * {@code run.json} last, as the mark that everything is there.
 */
final class Publisher {
  private final Path out;

  Publisher(Path out) {
    this.out = out;
  }

  /**
   * Publishes; files that are there with the right content are left alone, files of the previous
   * manifest that are no longer produced are removed.
   *
   * @param outputs files by relative path, without run.json
   * @param run the bytes of run.json, made from the hashes of all files
   */
  void publish(SortedMap<String, OutputFile> outputs, Function<Manifest, byte[]> run) {
    try {
      DurableFiles.folder(out);
      wipeTemporary();
      Manifest before = Manifest.read(out).orElse(new Manifest(new TreeMap<>()));
      SortedMap<String, String> hashes = new TreeMap<>();
      for (Map.Entry<String, OutputFile> output : outputs.entrySet()) {
        Path file = out.resolve(output.getKey());
        hashes.put(output.getKey(), DurableFiles.writeChanged(file, output.getValue()::write));
      }
      Manifest now = new Manifest(hashes);
      for (String path : before.files().keySet()) {
        if (!now.files().containsKey(path)) {
          remove(path);
        }
      }
      DurableFiles.write(out.resolve(Manifest.RUN), run.apply(now));
    } catch (IOException e) {
      throw new LedgerException(
          "The outputs cannot be written to " + at(e) + ": " + DurableFiles.why(e), e);
    }
  }

  private String at(IOException e) {
    return e instanceof FileSystemException f && f.getFile() != null
        ? f.getFile().replace(DurableFiles.TEMPORARY, "")
        : out.toString();
  }

  private void remove(String path) throws IOException {
    Path file = out.resolve(path).normalize();
    if (file.startsWith(out.normalize()) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      DurableFiles.delete(file);
    }
  }

  private void wipeTemporary() throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file :
          files
              .filter(f -> String.valueOf(f.getFileName()).endsWith(DurableFiles.TEMPORARY))
              .toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
