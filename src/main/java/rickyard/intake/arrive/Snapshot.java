package rickyard.intake.arrive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.Set;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Sha256;

/** The bytes of one file at one moment, or why there are none. */
final class Snapshot {
  static final Arrival.Problem CHANGED =
      new Arrival.Problem(
          "changed-while-read", "The file changed while it was read; it is read next time.");

  private static final byte[] NONE = {};

  private final long size;
  private final String sha256;
  private final byte[] bytes;
  private final Optional<Arrival.Problem> problem;

  private Snapshot(long size, String sha256, byte[] bytes, Optional<Arrival.Problem> problem) {
    this.size = size;
    this.sha256 = sha256;
    this.bytes = bytes;
    this.problem = problem;
  }

  /** Reads a regular file once; anything else is not opened. */
  static Snapshot of(Path file, ReadLimits limits) {
    try {
      BasicFileAttributes before = attributes(file);
      if (before.isSymbolicLink()) {
        return refused(0, "link", "It is a link, not a file; put the file itself in the inbox.");
      }
      if (!before.isRegularFile()) {
        return refused(0, "not-a-file", "It is a device, pipe or socket, not a file.");
      }
      if (before.size() > limits.bytes()) {
        return refused(
            before.size(),
            "too-large",
            "The file has more than " + limits.bytes() + " bytes, too large for a report.");
      }
      return read(file, before);
    } catch (NoSuchFileException gone) {
      return refused(0, "removed", "The file went away while the inbox was listed.");
    } catch (IOException | SecurityException unreadable) {
      return refused(0, "unreadable", "The file cannot be read; check who may read it.");
    }
  }

  private static Snapshot read(Path file, BasicFileAttributes before) throws IOException {
    byte[] bytes;
    try (InputStream in =
        Channels.newInputStream(
            Files.newByteChannel(
                file, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)))) {
      // One byte more than there were shows that the file grows; a writer without end is not waited
      // for.
      bytes = in.readNBytes((int) before.size() + 1);
    }
    BasicFileAttributes after = attributes(file);
    boolean still =
        bytes.length == before.size()
            && after.size() == before.size()
            && after.lastModifiedTime().equals(before.lastModifiedTime());
    return still
        ? new Snapshot(bytes.length, Sha256.of(bytes), bytes, Optional.empty())
        : new Snapshot(before.size(), "", NONE, Optional.of(CHANGED));
  }

  private static BasicFileAttributes attributes(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
  }

  private static Snapshot refused(long size, String code, String sentence) {
    return new Snapshot(size, "", NONE, Optional.of(new Arrival.Problem(code, sentence)));
  }

  long size() {
    return size;
  }

  String sha256() {
    return sha256;
  }

  byte[] bytes() {
    return bytes;
  }

  Optional<Arrival.Problem> problem() {
    return problem;
  }
}
