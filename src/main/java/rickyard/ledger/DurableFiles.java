package rickyard.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * Files that are whole or not there: written under a temporary name in the same folder, flushed to
 * the disk, renamed.
 */
public final class DurableFiles {
  /** Marks a name as temporary; such files are wiped at the start of the next run. */
  public static final String TEMPORARY = ".rickyard-tmp";

  private DurableFiles() {}

  /** Writes a file whole; an existing one is replaced in one step. */
  public static void write(Path target, byte[] bytes) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("no folder for " + target.getFileName());
    }
    Files.createDirectories(folder);
    Path temporary = folder.resolve(target.getFileName() + TEMPORARY);
    try (FileChannel channel =
        FileChannel.open(
            temporary,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING,
            LinkOption.NOFOLLOW_LINKS)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    Files.move(
        temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    sync(folder);
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

  /** Makes a folder that only its owner may enter, where the file system knows owners. */
  public static void privateFolder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    if (Files.getFileStore(existing(folder)).supportsFileAttributeView("posix")) {
      Files.createDirectories(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      Files.createDirectories(folder);
    }
  }

  private static Path existing(Path folder) {
    Path at = folder.toAbsolutePath();
    while (!Files.exists(at) && at.getParent() != null) {
      at = at.getParent();
    }
    return at;
  }
}
