package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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

  /**
   * The rows of the file but some, for what must not depend on those.
   *
   * @param rows numbers of the rows left out, from 1 with the header as row 1
   * @return the text of the rest, a line feed after each row; empty if nothing but a header is left
   */
  public Optional<String> without(Set<Integer> rows) {
    StringBuilder kept = new StringBuilder();
    int left = 0;
    Register register = Register.findByFileName(name).orElseThrow();
    List<String> records =
        new RegisterReader(register, column -> false, new Findings()).records(text);
    for (int i = 0; i < records.size(); i++) {
      if (!records.get(i).isBlank() && !rows.contains(i + 1)) {
        kept.append(records.get(i)).append('\n');
        left++;
      }
    }
    return left > 1 ? Optional.of(kept.toString()) : Optional.empty();
  }
}
