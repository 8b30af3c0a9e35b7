package rickyard.ledger;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The bytes of every document that ever arrived, kept unchanged under their SHA-256. One that is
 * found damaged is put back from the inbox where the same bytes still lie there.
 */
public final class Originals {
  private static final Pattern NAME = Pattern.compile("[0-9a-f]{64}");
  private static final int BUFFER = 1 << 16;
  private final Path folder;
  private final Rescue rescue;

  Originals(Path folder, Rescue rescue) {
    this.folder = folder;
    this.rescue = rescue;
  }

  /** Whether a document of this size is kept; its content is checked when it is read. */
  public boolean has(String sha256, long bytes) {
    Path file = folder.resolve(sha256);
    try {
      return Files.isRegularFile(file) && Files.size(file) == bytes;
    } catch (IOException e) {
      return false;
    }
  }

  /** Keeps a document; one that is there already is left alone. */
  public void keep(String sha256, byte[] bytes) {
    if (!has(sha256, bytes.length)) {
      write(sha256, bytes);
    }
  }

  private void write(String sha256, byte[] bytes) {
    try {
      DurableFiles.privateFolder(folder);
      DurableFiles.write(folder.resolve(sha256), bytes);
    } catch (IOException e) {
      throw new LedgerException(
          "The original " + folder.resolve(sha256) + " cannot be written: " + DurableFiles.why(e),
          e);
    }
  }

  /**
   * Reads a document back and checks it against its name.
   *
   * @throws LedgerException if it is missing or damaged and not in the inbox either
   */
  public byte[] read(String sha256) {
    Path file = folder.resolve(sha256);
    String trouble;
    try {
      byte[] bytes = Files.readAllBytes(file);
      if (sha256(bytes).equals(sha256)) {
        return bytes;
      }
      trouble = "is damaged: its content no longer matches its name";
    } catch (NoSuchFileException e) {
      trouble = "is missing";
    } catch (IOException e) {
      trouble = "cannot be read (" + DurableFiles.why(e) + ")";
    }
    return restored(sha256, trouble);
  }

  private byte[] restored(String sha256, String trouble) {
    String what = "The original " + folder.resolve(sha256) + " " + trouble;
    Optional<byte[]> found = rescue.find(sha256);
    if (found.isEmpty()) {
      throw new LedgerException(
          what
              + ". Put it back from a backup of the ledger, or put the report into the inbox again,"
              + " then run the same command again.");
    }
    write(sha256, found.get());
    rescue.say("restore  " + what + "; put back from the inbox");
    return found.get();
  }

  /** Hashes of all documents kept, in order. */
  List<String> all() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> String.valueOf(f.getFileName()))
          .filter(name -> NAME.matcher(name).matches())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new LedgerException(
          "The originals " + folder + " cannot be listed: " + DurableFiles.why(e), e);
    }
  }

  /** SHA-256 in lower-case hex of content that is made while it is written. */
  public static String sha256(DurableFiles.Content content) throws IOException {
    MessageDigest digest = digest();
    OutputStream out =
        new BufferedOutputStream(
            new DigestOutputStream(OutputStream.nullOutputStream(), digest), BUFFER);
    content.write(out);
    out.flush();
    return HexFormat.of().formatHex(digest.digest());
  }

  /** SHA-256 of bytes, lower-case hex. */
  public static String sha256(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
