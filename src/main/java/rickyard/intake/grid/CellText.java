package rickyard.intake.grid;

import java.text.Normalizer;

/** Text as a cell holds it: one line, single spaces, nothing that cannot be seen. */
public final class CellText {
  /** Stands for a character that could not be read; no number can be read across it. */
  public static final char UNKNOWN = '\uFFFD';

  private CellText() {}

  /**
   * Makes one line of a text: all white space becomes single spaces, characters without width are
   * dropped, control characters become {@link #UNKNOWN}, and so do those that turn the direction of
   * reading: a figure behind one shows other digits first than the file holds.
   *
   * @return stripped text, empty where there was nothing to see
   */
  public static String plain(String raw) {
    StringBuilder out = new StringBuilder(raw.length());
    boolean gap = false;
    for (int at = 0; at < raw.length(); ) {
      int point = raw.codePointAt(at);
      at += Character.charCount(point);
      if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
        gap = true;
      } else if (!isWithoutWidth(point)) {
        if (gap && !out.isEmpty()) {
          out.append(' ');
        }
        gap = false;
        append(out, point);
      }
    }
    String line = Normalizer.normalize(out, Normalizer.Form.NFC).strip();
    return line.isBlank() ? "" : line;
  }

  private static void append(StringBuilder out, int point) {
    if (point >= 0xFB00 && point <= 0xFB06) {
      // Letters drawn in one piece: fi, fl and their like.
      out.append(Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKC));
    } else {
      out.appendCodePoint(isUnreadable(point) ? UNKNOWN : point);
    }
  }

  /** Whether a character turns the direction of what follows, so that eye and file differ. */
  public static boolean isTurning(int point) {
    return point == 0x061C
        || point == 0x200F
        || (point >= 0x202A && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069);
  }

  private static boolean isWithoutWidth(int point) {
    return Character.getType(point) == Character.FORMAT && !isTurning(point);
  }

  private static boolean isUnreadable(int point) {
    int type = Character.getType(point);
    return isTurning(point)
        || type == Character.CONTROL
        || type == Character.PRIVATE_USE
        || type == Character.SURROGATE
        || type == Character.UNASSIGNED;
  }
}
