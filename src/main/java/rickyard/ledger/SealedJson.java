package rickyard.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A JSON object whose last property is the SHA-256 of every byte before that property. */
final class SealedJson {
  private static final Pattern END = Pattern.compile(",\"sha256\":\"([0-9a-f]{64})\"\\}");
  private static final int END_LENGTH = ",\"sha256\":\"\"}".length() + 64;

  private SealedJson() {}

  /** Adds the seal to an object with at least one property. */
  static byte[] seal(String object) {
    String open = object.substring(0, object.length() - 1);
    String digest = Originals.sha256(open.getBytes(StandardCharsets.UTF_8));
    return (open + ",\"sha256\":\"" + digest + "\"}").getBytes(StandardCharsets.UTF_8);
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
