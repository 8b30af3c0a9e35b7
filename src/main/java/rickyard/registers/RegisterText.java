package rickyard.registers;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import rickyard.tables.TableProblem;

/** The bytes of a register as text: UTF-8, strictly, with or without a byte order mark. */
final class RegisterText {
  private static final int LARGEST = 64 * 1024 * 1024;
  private static final String EXPECTED = "text in UTF-8 (save the table as CSV UTF-8)";

  private RegisterText() {}

  /** The text, or empty after a fatal problem with the file's name and the row it was seen in. */
  static Optional<String> decode(String file, byte[] bytes, Findings findings) {
    if (bytes.length > LARGEST) {
      return refuse(file, 0, "too-large", "at most 64 MiB", bytes.length + " bytes", findings);
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult end = decoder.decode(in, out, true);
    int nul = indexOf(bytes, (byte) 0);
    if (nul >= 0 && (end.isUnderflow() || nul < in.position())) {
      return refuse(file, line(bytes, nul), "not-utf-8", EXPECTED, "a NUL character", findings);
    }
    if (!end.isUnderflow()) {
      String found =
          looksLikeUtf16(bytes)
              ? "text in UTF-16"
              : String.format(
                  java.util.Locale.ROOT, "byte %02x in another encoding", bytes[in.position()]);
      return refuse(file, line(bytes, in.position()), "not-utf-8", EXPECTED, found, findings);
    }
    String text = out.flip().toString();
    return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  private static Optional<String> refuse(
      String file, int row, String code, String expected, String found, Findings findings) {
    findings.fatal(new TableProblem(file, row, "", code, expected, found));
    return Optional.empty();
  }

  private static boolean looksLikeUtf16(byte[] bytes) {
    int first = bytes[0] & 0xff;
    int second = bytes.length > 1 ? bytes[1] & 0xff : 0;
    return (first == 0xff && second == 0xfe) || (first == 0xfe && second == 0xff);
  }

  private static int indexOf(byte[] bytes, byte wanted) {
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == wanted) {
        return i;
      }
    }
    return -1;
  }

  private static int line(byte[] bytes, int end) {
    int line = 1;
    for (int i = 0; i < end; i++) {
      if (bytes[i] == '\n') {
        line++;
      }
    }
    return line;
  }
}
