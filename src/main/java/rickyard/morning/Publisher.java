package rickyard.morning;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
  /** summary.html, .json, .pdf and .xlsx. */
  private static final String LONGEST = "summary.";

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
      Manifest now = new Manifest(written(outputs));
      for (String path : before.files().keySet()) {
        if (!now.files().containsKey(path)) {
          remove(path);
        }
      }
      DurableFiles.write(out.resolve(Manifest.RUN), run.apply(now));
    } catch (UnwrittenException e) {
      throw unwritten(e.cause);
    } catch (IOException e) {
      throw unwritten(e);
    }
  }

  /** Takes a failure from the hand that met it to where it is told. */
  private static final class UnwrittenException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final IOException cause;

    UnwrittenException(IOException cause) {
      super(cause);
      this.cause = cause;
    }
  }

  private LedgerException unwritten(IOException e) {
    return new LedgerException(
        "The outputs cannot be written to " + at(e) + ": " + DurableFiles.why(e), e);
  }

  /** Writes the files side by side, the longest to make first; none knows of another. */
  private SortedMap<String, String> written(SortedMap<String, OutputFile> outputs) {
    List<Map.Entry<String, OutputFile>> files = new ArrayList<>(outputs.entrySet());
    files.sort(Comparator.comparing(file -> !file.getKey().startsWith(LONGEST)));
    List<String> hashes = Hands.map(files, file -> written(file.getKey(), file.getValue()));
    SortedMap<String, String> byName = new TreeMap<>();
    for (int i = 0; i < files.size(); i++) {
      byName.put(files.get(i).getKey(), hashes.get(i));
    }
    return byName;
  }

  private String written(String name, OutputFile output) {
    try {
      return DurableFiles.writeChanged(out.resolve(name), output::write);
    } catch (IOException e) {
      throw new UnwrittenException(e);
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
