package rickyard.report.calendar;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * UTF-8 lines folded after at most 75 bytes, as RFC 5545 wants it, and never inside a character:
 * the library folds by Java's characters, through the middle of one where it falls so.
 */
final class FoldedLines extends FilterOutputStream {
  private static final int MOST = 75;
  private static final byte[] FOLD = {'\r', '\n', ' '};

  private int length;

  FoldedLines(OutputStream out) {
    super(out);
  }

  @Override
  public void write(int b) throws IOException {
    if (b == '\r' || b == '\n') {
      length = 0;
    } else {
      // A character is begun only where all of it fits.
      if (length + size(b) > MOST) {
        out.write(FOLD);
        length = 1;
      }
      length++;
    }
    out.write(b);
  }

  /** Bytes of the character that begins here; one within a character, which fits already. */
  private static int size(int b) {
    int first = b & 0xFF;
    if (first < 0xC0) {
      return first < 0x80 ? 1 : 0;
    }
    return first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
  }
}
