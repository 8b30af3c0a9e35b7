package rickyard.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Holds an office for one run; the operating system frees it when the process ends, however. */
public final class OfficeLock implements AutoCloseable {
  private final FileChannel channel;

  private OfficeLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes the office, or says that another run has it.
   *
   * @param ledger the ledger folder; must exist
   * @return the lock, empty if another run holds it
   */
  public static Optional<OfficeLock> take(Path ledger) {
    try {
      FileChannel channel =
          FileChannel.open(
              ledger.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (tryLock(channel) == null) {
        channel.close();
        return Optional.empty();
      }
      return Optional.of(new OfficeLock(channel));
    } catch (IOException e) {
      throw new LedgerException("The ledger folder cannot be locked: " + e.getMessage(), e);
    }
  }

  private static @org.jspecify.annotations.Nullable FileLock tryLock(FileChannel channel)
      throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new LedgerException("The lock cannot be released: " + e.getMessage(), e);
    }
  }
}
