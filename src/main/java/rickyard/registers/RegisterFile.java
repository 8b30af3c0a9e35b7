package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * One register file as it was found, for the morning's identity and the journal's snapshot.
 *
 * @param name file name, for example {@code horses.csv}
 * @param sha256 SHA-256 of the file's bytes, lower-case hex
 * @param text the file's text without byte order mark, line ends as {@code \n}
 */
public record RegisterFile(String name, String sha256, String text) {
  public RegisterFile {
    requireNonNull(name, "name");
    requireNonNull(sha256, "sha256");
    requireNonNull(text, "text");
  }

  static RegisterFile of(String name, byte[] bytes, String text) {
    return new RegisterFile(name, sha256(bytes), text.replace("\r\n", "\n").replace('\r', '\n'));
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
