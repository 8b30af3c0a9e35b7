package rickyard.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A JSON object whose last property is the SHA-256 of every byte before that property. */
final class SealedJson {
  private static final Pattern END = Pattern.compile(",\"sha256\":\"([0-9a-f]{64})\"\\}");
  private static final int END_LENGTH = ",\"sha256\":\"\"}".length() + 64;

  private SealedJson() {}

  /** Adds the seal to an object with at least one property. */
  static byte[] seal(String object) {
    return seal(object.getBytes(StandardCharsets.UTF_8), "");
  }

  /**
   * The same with further properties, each behind a comma; a season's object is large and is not
   * copied for them.
   */
  static byte[] seal(byte[] object, String further) {
    byte[] more = further.getBytes(StandardCharsets.UTF_8);
    int open = object.length - 1 + more.length;
    byte[] sealed = Arrays.copyOf(object, open + END_LENGTH);
    System.arraycopy(more, 0, sealed, object.length - 1, more.length);
    MessageDigest digest = Originals.digest();
    digest.update(sealed, 0, open);
    String end = ",\"sha256\":\"" + HexFormat.of().formatHex(digest.digest()) + "\"}";
    System.arraycopy(end.getBytes(StandardCharsets.UTF_8), 0, sealed, open, END_LENGTH);
    return sealed;
  }

  /** Whether there is a seal at the end, true or not. */
  static boolean isSealed(byte[] bytes) {
    return end(bytes).matches();
  }

  /** Whether the seal is there and true. */
  static boolean isSound(byte[] bytes) {
    Matcher end = end(bytes);
    return end.matches()
        && Originals.sha256(Arrays.copyOf(bytes, bytes.length - END_LENGTH)).equals(end.group(1));
  }

  private static Matcher end(byte[] bytes) {
    int from = Math.max(0, bytes.length - END_LENGTH);
    return END.matcher(new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1));
  }
}
