package rickyard.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What tells an office from every other on a shared server: 32 random hexadecimal digits in {@code
 * ledger/office-id}, made once. No output holds it. Where it is lost a new one is made, and with it
 * a new index.
 */
final class OfficeId {
  private static final String FILE = "office-id";
  private static final int BYTES = 16;
  private static final Pattern ID = Pattern.compile("[0-9a-f]{32}");

  private OfficeId() {}

  static String of(Path folder) {
    try {
      Optional<String> kept = read(folder);
      if (kept.isPresent()) {
        return kept.get();
      }
      byte[] random = new byte[BYTES];
      new SecureRandom().nextBytes(random);
      String made = HexFormat.of().formatHex(random);
      DurableFiles.write(folder.resolve(FILE), made.getBytes(StandardCharsets.ISO_8859_1));
      return made;
    } catch (IOException e) {
      throw LedgerException.cannotWrite(folder, e);
    }
  }

  /** The id that is there; a worker makes none. */
  static Optional<String> find(Path folder) {
    try {
      return read(folder);
    } catch (IOException e) {
      throw new LedgerException(
          "The file " + folder.resolve(FILE) + " cannot be read: " + DurableFiles.why(e), e);
    }
  }

  private static Optional<String> read(Path folder) throws IOException {
    try {
      String text = Files.readString(folder.resolve(FILE), StandardCharsets.ISO_8859_1).strip();
      return Optional.of(text).filter(t -> ID.matcher(t).matches());
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }
}
