package rickyard.core.forage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Makes the ids of questions from what they are about, never from order or clock. */
public final class QuestionId {
  private static final int SHOWN = 12;

  private QuestionId() {}

  static String of(String... parts) {
    return "q-" + digest(parts);
  }

  /** What tells one list of words from every other. */
  public static String digest(String... parts) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(String.join("\u001f", parts).getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, SHOWN);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
