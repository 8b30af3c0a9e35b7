package rickyard.intake.grid.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.UnreadableException;

/**
 * Text out of bytes.
 *
 * <p>A byte-order mark decides; then two-byte encodings by their zero bytes; then strict UTF-8;
 * only then the one-byte encodings, the one whose letters make most sense, with a caution.
 *
 * @param text without byte-order mark
 * @param charset the encoding's name
 * @param guessed whether the encoding had to be guessed
 */
record Decoded(String text, String charset, boolean guessed) {
  private static final List<String> ONE_BYTE = List.of("windows-1252", "IBM850", "x-MacRoman");
  private static final int SAMPLE = 1 << 16;

  /**
   * Decodes a whole text.
   *
   * @throws UnreadableException code {@code binary} where the bytes are no text, {@code damaged}
   *     where they break the encoding that they claim
   */
  static Decoded of(byte[] bytes) {
    Decoded decoded = claimed(bytes).orElseGet(() -> unclaimed(bytes));
    String text = decoded.text;
    if (text.indexOf('\0') >= 0 || controls(text) * 100L > text.length()) {
      throw binary();
    }
    // Old systems end a text file with this one character.
    return text.endsWith("\u001A")
        ? new Decoded(text.substring(0, text.length() - 1), decoded.charset, decoded.guessed)
        : decoded;
  }

  private static UnreadableException binary() {
    return new UnreadableException(
        "binary", "The file holds no readable text; ask for the report as CSV or PDF.");
  }

  private static Optional<Decoded> claimed(byte[] bytes) {
    if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
      return Optional.of(marked(bytes, 3, StandardCharsets.UTF_8));
    }
    if (starts(bytes, 0xFF, 0xFE, 0, 0)) {
      return Optional.of(marked(bytes, 4, Charset.forName("UTF-32LE")));
    }
    if (starts(bytes, 0, 0, 0xFE, 0xFF)) {
      return Optional.of(marked(bytes, 4, Charset.forName("UTF-32BE")));
    }
    if (starts(bytes, 0xFF, 0xFE)) {
      return Optional.of(marked(bytes, 2, StandardCharsets.UTF_16LE));
    }
    if (starts(bytes, 0xFE, 0xFF)) {
      return Optional.of(marked(bytes, 2, StandardCharsets.UTF_16BE));
    }
    return Optional.empty();
  }

  private static Decoded marked(byte[] bytes, int mark, Charset charset) {
    String text =
        strict(bytes, mark, charset)
            .orElseThrow(
                () ->
                    new UnreadableException(
                        "damaged",
                        "The text does not follow its own encoding ("
                            + charset.name()
                            + "); ask for it again."));
    return new Decoded(text, charset.name(), false);
  }

  private static Decoded unclaimed(byte[] bytes) {
    Optional<Decoded> twoBytes = twoBytes(bytes);
    if (twoBytes.isPresent()) {
      return twoBytes.get();
    }
    Optional<String> utf8 = strict(bytes, 0, StandardCharsets.UTF_8);
    if (utf8.isPresent()) {
      return new Decoded(utf8.get(), StandardCharsets.UTF_8.name(), false);
    }
    for (byte each : bytes) {
      if (each == 0) {
        throw binary();
      }
    }
    return oneByte(bytes);
  }

  /**
   * Latin text in two bytes has zeros in nearly every second place and hardly any in the others;
   * with fewer, some of it is in another encoding and would be lost.
   */
  private static Optional<Decoded> twoBytes(byte[] bytes) {
    int pairs = Math.min(bytes.length, SAMPLE) / 2;
    int even = 0;
    int odd = 0;
    for (int pair = 0; pair < pairs; pair++) {
      even += bytes[2 * pair] == 0 ? 1 : 0;
      odd += bytes[2 * pair + 1] == 0 ? 1 : 0;
    }
    if (pairs < 2 || bytes.length % 2 != 0 || Math.min(even, odd) * 50 > pairs) {
      return Optional.empty();
    }
    if (odd * 20 > pairs * 19) {
      return strict(bytes, 0, StandardCharsets.UTF_16LE).map(t -> new Decoded(t, "UTF-16LE", true));
    }
    if (even * 20 > pairs * 19) {
      return strict(bytes, 0, StandardCharsets.UTF_16BE).map(t -> new Decoded(t, "UTF-16BE", true));
    }
    return Optional.empty();
  }

  private static Decoded oneByte(byte[] bytes) {
    Optional<Decoded> best = Optional.empty();
    int bestSense = Integer.MIN_VALUE;
    for (String name : ONE_BYTE) {
      Optional<String> text =
          Charset.isSupported(name) ? strict(bytes, 0, Charset.forName(name)) : Optional.empty();
      int sense = text.map(Decoded::sense).orElse(Integer.MIN_VALUE);
      if (text.isPresent() && sense > bestSense) {
        bestSense = sense;
        best = Optional.of(new Decoded(text.get(), name, true));
      }
    }
    return best.orElseGet(
        () -> new Decoded(new String(bytes, StandardCharsets.ISO_8859_1), "ISO-8859-1", true));
  }

  /**
   * How well the characters beyond ASCII fit a report: letters beside letters, signs of measure.
   */
  private static int sense(String text) {
    int sense = 0;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c >= 0x80) {
        sense += senseOf(text, at, c);
      }
    }
    return sense;
  }

  private static int senseOf(String text, int at, char c) {
    char before = at > 0 ? text.charAt(at - 1) : ' ';
    char after = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
    if (Character.isLetter(c) && c != 'µ' && c != 'º' && c != 'ª') {
      boolean midWord = Character.isLetter(before) || Character.isLetter(after);
      boolean shouting = Character.isUpperCase(c) && Character.isLowerCase(before);
      boolean common = "äöüÄÖÜßéèêëàâáíìîïóòôúùûñçøæåõãøØÆÅ".indexOf(c) >= 0;
      return (midWord ? 2 : -1) + (shouting ? -3 : 0) + (common ? 1 : 0);
    }
    return "µ°±²³½¼·×–—’‘“”€£©®\u00A0".indexOf(c) >= 0 ? 1 : -2;
  }

  private static int controls(String text) {
    int controls = 0;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      boolean layout = c == '\t' || c == '\n' || c == '\r' || c == '\f' || c == '\u000B';
      controls += (Character.isISOControl(c) && !layout) || c == CellText.UNKNOWN ? 1 : 0;
    }
    return controls;
  }

  private static Optional<String> strict(byte[] bytes, int from, Charset charset) {
    try {
      return Optional.of(
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
              .toString());
    } catch (CharacterCodingException no) {
      return Optional.empty();
    }
  }

  private static boolean starts(byte[] bytes, int... mark) {
    for (int at = 0; at < mark.length; at++) {
      if (at >= bytes.length || (bytes[at] & 0xFF) != mark[at]) {
        return false;
      }
    }
    return true;
  }
}
