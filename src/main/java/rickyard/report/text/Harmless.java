package rickyard.report.text;

import java.util.regex.Pattern;

/**
 * Text from outside with nothing in it that steers a terminal, a printer or the order of reading.
 *
 * <p>Tabs and line ends stay. Other control characters show as their control pictures (U+2400 …);
 * characters that turn the direction of writing, unpaired surrogates and non-characters show as
 * U+FFFD.
 */
public final class Harmless {
  private static final char REPLACEMENT = '\uFFFD';
  private static final int CONTROL_PICTURES = 0x2400;
  private static final int PICTURE_OF_DELETE = 0x2421;

  /** What is more than one blank, or another one than the space. */
  private static final Pattern SPACES = Pattern.compile(" [ \\t\\r\\n]+|[\\t\\r\\n][ \\t\\r\\n]*");

  private Harmless() {}

  /** The text with every steering character made visible. */
  public static String text(String raw) {
    if (isHarmless(raw)) {
      return raw;
    }
    StringBuilder out = new StringBuilder(raw.length());
    raw.codePoints().forEach(c -> out.appendCodePoint(shown(c)));
    return out.toString();
  }

  /** Whether every character shows as itself. */
  private static boolean isHarmless(String raw) {
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      boolean plain = c >= ' ' && c < 0x7F;
      if (!plain && (Character.isSurrogate(c) || shown(c) != c)) {
        return false;
      }
    }
    return true;
  }

  /** Most texts are: only printable characters of ASCII. */
  private static boolean isPlain(String raw) {
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c < ' ' || c >= 0x7F) {
        return false;
      }
    }
    return true;
  }

  /** The same on one line: runs of white space become one space. */
  public static String line(String raw) {
    return isPlain(raw) && !raw.contains("  ")
        ? raw.strip()
        : SPACES.matcher(text(raw)).replaceAll(" ").strip();
  }

  /** One line that ends like a sentence; nothing else is changed, for it may begin with a name. */
  public static String sentence(String raw) {
    String line = line(raw);
    boolean ended = line.isEmpty() || ".!?…".indexOf(line.charAt(line.length() - 1)) >= 0;
    return ended ? line : line + ".";
  }

  private static int shown(int c) {
    if (c == '\t' || c == '\n' || c == '\r') {
      return c;
    }
    if (c < ' ') {
      return CONTROL_PICTURES + c;
    }
    if (c == 0x7F) {
      return PICTURE_OF_DELETE;
    }
    return steers(c) ? REPLACEMENT : c;
  }

  private static boolean steers(int c) {
    boolean secondControls = c >= 0x80 && c <= 0x9F;
    boolean lineSeparators = c == 0x2028 || c == 0x2029;
    boolean direction =
        c == 0x061C
            || c == 0x200E
            || c == 0x200F
            || (c >= 0x202A && c <= 0x202E)
            || (c >= 0x2066 && c <= 0x2069);
    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
    boolean nonCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    boolean mark = c == 0xFEFF;
    return secondControls || lineSeparators || direction || surrogate || nonCharacter || mark;
  }
}
