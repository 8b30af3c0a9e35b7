package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The bytes of every document that ever arrived, kept unchanged under their SHA-256. */
public final class Originals {
  private final Path folder;

  Originals(Path folder) {
    this.folder = folder;
  }

  public boolean has(String sha256) {
    return Files.isRegularFile(folder.resolve(sha256));
  }

  /** Keeps a document; one that is there already is left alone. */
  public void keep(String sha256, byte[] bytes) {
    if (has(sha256)) {
      return;
    }
    try {
      DurableFiles.write(folder.resolve(sha256), bytes);
    } catch (IOException e) {
      throw new LedgerException("An original cannot be kept: " + e.getMessage(), e);
    }
  }

  /**
   * Reads a document back and checks it against its name.
   *
   * @throws LedgerException if it is missing or damaged
   */
  public byte[] read(String sha256) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(folder.resolve(sha256));
    } catch (IOException e) {
      throw new LedgerException(
          "The original " + sha256 + " in the ledger cannot be read: " + e.getMessage(), e);
    }
    if (!sha256(bytes).equals(sha256)) {
      throw new LedgerException(
          "The original "
              + sha256
              + " in the ledger is damaged: its content no longer matches its name. Put it back"
              + " from a backup, or delete it and put the report into the inbox again.");
    }
    return bytes;
  }

  /** SHA-256 in lower-case hex. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
