package rickyard.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The digest of the database's file as it was left: beside it while it is closed, gone while it is
 * open. A file that is not what was left was altered by something else, even where the database
 * itself would open it. Without a mark (a run was killed, the disk was full) nothing is said.
 */
final class ClosedMark {
  static final String DATABASE = "rickyard.mv.db";
  private static final String MARK = "closed.sha256";
  private static final Logger LOG = LoggerFactory.getLogger(ClosedMark.class);

  private ClosedMark() {}

  /** Whether the database's file is another than the one that was left. */
  static boolean isAltered(Path folder) {
    try {
      return Files.exists(folder.resolve(MARK))
          && Files.exists(folder.resolve(DATABASE))
          && !Files.readString(folder.resolve(MARK), StandardCharsets.ISO_8859_1)
              .equals(digest(folder));
    } catch (IOException e) {
      LOG.warn("database's mark not read: {}", e.getClass().getName());
      return false;
    }
  }

  /** Takes the mark away, before anything is written. */
  static void lift(Path folder) throws IOException {
    DurableFiles.delete(folder.resolve(MARK));
  }

  /** Marks the closed database. One that cannot be marked is as good as one that was killed. */
  static void set(Path folder) {
    try {
      if (Files.exists(folder.resolve(DATABASE))) {
        DurableFiles.write(
            folder.resolve(MARK), digest(folder).getBytes(StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      LOG.warn("database not marked: {}", e.getClass().getName());
    }
  }

  private static String digest(Path folder) throws IOException {
    return Originals.sha256(out -> Files.copy(folder.resolve(DATABASE), out));
  }
}
