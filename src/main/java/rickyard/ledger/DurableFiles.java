package rickyard.ledger;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Files that are whole or not there: written under a temporary name in the same folder, flushed to
 * the disk, renamed.
 */
public final class DurableFiles {
  /** Marks a name as temporary; such files are wiped at the start of the next run. */
  public static final String TEMPORARY = ".rickyard-tmp";

  private static final int BUFFER = 1 << 16;

  private DurableFiles() {}

  /** Writes a file whole; an existing one is replaced in one step. */
  public static void write(Path target, byte[] bytes) throws IOException {
    write(target, out -> out.write(bytes));
  }

  /** What fills a file. */
  @FunctionalInterface
  public interface Content {
    void write(OutputStream out) throws IOException;
  }

  /** The same with content that is made while it is written. */
  public static void write(Path target, Content content) throws IOException {
    Path temporary = temporary(target);
    try {
      try (FileChannel channel = open(temporary)) {
        fill(Channels.newOutputStream(channel), content);
        channel.force(true);
      }
      rename(temporary, target);
    } catch (IOException | RuntimeException e) {
      discard(temporary, e);
      throw e;
    }
  }

  /** Where a write failed nothing is left of it, unless that fails too: the next run wipes it. */
  private static void discard(Path temporary, Exception cause) {
    try {
      Files.deleteIfExists(temporary);
    } catch (IOException e) {
      cause.addSuppressed(e);
    }
  }

  /**
   * The same, but a file that is there with the very bytes is left alone.
   *
   * @return the SHA-256 of the bytes
   */
  public static String writeChanged(Path target, Content content) throws IOException {
    Path temporary = temporary(target);
    try {
      String hash;
      boolean isThere;
      try (FileChannel channel = open(temporary)) {
        MessageDigest digest = Originals.digest();
        fill(new DigestOutputStream(Channels.newOutputStream(channel), digest), content);
        hash = HexFormat.of().formatHex(digest.digest());
        isThere = isThere(target, hash);
        if (!isThere) {
          channel.force(true);
        }
      }
      if (isThere) {
        Files.delete(temporary);
      } else {
        rename(temporary, target);
      }
      return hash;
    } catch (IOException | RuntimeException e) {
      discard(temporary, e);
      throw e;
    }
  }

  /** Whether a file, not a link to one, is there with this SHA-256. */
  public static boolean isThere(Path file, String sha256) {
    try {
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          && Originals.sha256(out -> Files.copy(file, out)).equals(sha256);
    } catch (IOException e) {
      return false;
    }
  }

  private static Path temporary(Path target) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("no folder for " + target.getFileName());
    }
    makeFolders(folder);
    return folder.resolve(target.getFileName() + TEMPORARY);
  }

  private static FileChannel open(Path temporary) throws IOException {
    return FileChannel.open(
        temporary,
        StandardOpenOption.CREATE,
        StandardOpenOption.WRITE,
        StandardOpenOption.TRUNCATE_EXISTING,
        LinkOption.NOFOLLOW_LINKS);
  }

  private static void fill(OutputStream to, Content content) throws IOException {
    OutputStream out = new BufferedOutputStream(to, BUFFER);
    content.write(out);
    out.flush();
  }

  /** Renames in one step and makes that durable; a file under the new name is replaced. */
  static void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    syncParent(to);
  }

  /** Removes a file, if it is there, and makes that durable. */
  public static void delete(Path file) throws IOException {
    if (Files.deleteIfExists(file)) {
      syncParent(file);
    }
  }

  private static void syncParent(Path file) {
    Optional.ofNullable(file.toAbsolutePath().getParent()).ifPresent(DurableFiles::sync);
  }

  /** Makes renames in a folder durable, where the system allows a folder to be flushed. */
  static void sync(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Some systems cannot open a folder; there the rename is as durable as it gets.
      return;
    }
  }

  /** Makes a folder and those around it, each name durable. */
  private static void makeFolders(Path folder, FileAttribute<?>... attributes) throws IOException {
    Path there = existing(folder);
    if (there.equals(folder.toAbsolutePath()) && Files.isDirectory(folder)) {
      return;
    }
    Files.createDirectories(folder, attributes);
    for (Path made = folder.toAbsolutePath();
        made != null && !made.equals(there);
        made = made.getParent()) {
      syncParent(made);
    }
  }

  /** Makes a folder, if it is not there, durably. */
  public static void folder(Path folder) throws IOException {
    makeFolders(folder);
  }

  /** Makes a folder that only its owner may enter, where the file system knows owners. */
  public static void privateFolder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    if (Files.getFileStore(existing(folder)).supportsFileAttributeView("posix")) {
      makeFolders(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      makeFolders(folder);
    }
  }

  private static Path existing(Path folder) {
    Path at = folder.toAbsolutePath();
    while (!Files.exists(at) && at.getParent() != null) {
      at = at.getParent();
    }
    return at;
  }

  /** Empties a folder; one that is not there is empty. */
  static void wipe(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        if (!file.equals(folder)) {
          Files.delete(file);
        }
      }
    }
  }

  /** Removes a file, or a folder with everything in it. */
  static void remove(Path path) throws IOException {
    wipe(path);
    Files.deleteIfExists(path);
  }

  /** Removes what a killed run left half-written in a folder. */
  static void wipeTemporary(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    List<Path> left;
    try (Stream<Path> files = Files.list(folder)) {
      left = files.filter(f -> String.valueOf(f.getFileName()).endsWith(TEMPORARY)).toList();
    }
    for (Path file : left) {
      remove(file);
    }
  }

  /** Copies a folder with everything in it and flushes each file. */
  static void copy(Path from, Path to) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(from)) {
      files = all.toList();
    }
    for (Path file : files) {
      Path target = to.resolve(from.relativize(file).toString());
      if (Files.isDirectory(file)) {
        privateFolder(target);
      } else {
        Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
        try (FileChannel channel = FileChannel.open(target, StandardOpenOption.WRITE)) {
          channel.force(true);
        }
      }
    }
  }

  /** What the system said, without the path that the sentence names already. */
  public static String why(IOException e) {
    String reason =
        e instanceof FileSystemException f && f.getReason() != null
            ? f.getReason()
            : e instanceof FileSystemException ? e.getClass().getSimpleName() : e.getMessage();
    return String.valueOf(reason);
  }
}
