package rickyard.report.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * The name of a file for an id of a register: two ids never give one name, not even on a disk that
 * does not tell capitals from small letters, and no id gives a name that a system keeps for itself.
 *
 * <p>Small letters, digits, {@code -} and {@code _} stand for themselves. {@code +} turns capitals
 * on and off ({@code H-12} is {@code +h-12}). Anything else is {@code =} and four hexadecimal
 * digits. A long name ends in {@code =x} and the beginning of its SHA-256.
 */
public final class FileName {
  /** Of an id that is missing. */
  public static final String NONE = "=none";

  private static final int LONGEST = 100;
  private static final int KEPT = 60;
  private static final int HASH_DIGITS = 32;

  /** Names of devices, which Windows finds in every folder and under every ending. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

  private FileName() {}

  /** The name without an ending: ASCII, at most 100 characters, never empty. */
  public static String of(String id) {
    if (id.isEmpty()) {
      return NONE;
    }
    StringBuilder name = new StringBuilder();
    boolean capitals = false;
    for (int i = 0; i < id.length(); i++) {
      char c = id.charAt(i);
      if (isLetter(c) && isCapital(c) != capitals) {
        capitals = !capitals;
        name.append('+');
      }
      name.append(mapped(c, i == 0));
    }
    String mapped = name.toString();
    if (mapped.length() > LONGEST) {
      return mapped.substring(0, KEPT) + "=x" + hash(id);
    }
    return DEVICE.matcher(mapped).matches() ? code(id.charAt(0)) + mapped.substring(1) : mapped;
  }

  private static String mapped(char c, boolean isFirst) {
    if (isLetter(c)) {
      return String.valueOf((char) (c | 0x20));
    }
    boolean isPlain = (c >= '0' && c <= '9') || c == '_' || (c == '-' && !isFirst);
    return isPlain ? String.valueOf(c) : code(c);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || isCapital(c);
  }

  private static boolean isCapital(char c) {
    return c >= 'A' && c <= 'Z';
  }

  private static String code(char c) {
    return "=" + HexFormat.of().toHexDigits(c);
  }

  private static String hash(String id) {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      byte[] hash = sha256.digest(id.getBytes(StandardCharsets.UTF_16BE));
      return HexFormat.of().formatHex(hash).substring(0, HASH_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
