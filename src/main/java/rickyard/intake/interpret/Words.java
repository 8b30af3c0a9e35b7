package rickyard.intake.interpret;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Text as the dictionary compares it: lower case, no accents, no punctuation, no footnote marks;
 * {@code %} and {@code +} are words of their own.
 */
final class Words {
  private static final Pattern SUPERSCRIPT =
      Pattern.compile(
          "[\u00B9\u00B2\u00B3\u2070-\u207F\u00AA\u00BA\u1D43\u1D47\u1D9C\u1D48\u1D49\u1DA0\u1D4D\u02B0]+");
  private static final Pattern FOOTNOTE =
      Pattern.compile(
          "[*\u2020\u2021\u00A7#^]+|[(\\[][1-9][)\\]]\\s*$|(?<=[^0-9(])\\s[1-9]\\)\\s*$");
  private static final Pattern ENUMERATOR = Pattern.compile("^[0-9]{1,2}[.)]\\s+(?=\\p{L})");
  private static final Pattern DOTTED =
      Pattern.compile("(?<![\\p{L}0-9])((?:\\p{L}\\.\\s?){2,})(\\p{L}(?![\\p{L}0-9]))?");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern WORD = Pattern.compile("[\\p{L}0-9]+|%|\\+");

  /** Texts that were cut already: a cell is asked many questions, and a table repeats its cells. */
  private static final ConcurrentHashMap<String, List<String>> KNOWN = new ConcurrentHashMap<>();

  private static final String SIGNS = "*#^&";
  private static final int MOST_KNOWN = 20_000;
  private static final int LONGEST_KNOWN = 80;

  private Words() {}

  /** The words of a text in order. */
  static List<String> of(String text) {
    if (text.length() > LONGEST_KNOWN) {
      return cut(text);
    }
    List<String> known = KNOWN.get(text);
    if (known == null) {
      known = cut(text);
      if (KNOWN.size() >= MOST_KNOWN) {
        KNOWN.clear();
      }
      KNOWN.put(text, known);
    }
    return known;
  }

  private static List<String> cut(String text) {
    return isSimple(text) ? simple(text) : careful(text);
  }

  /**
   * Nothing but ASCII, and no sign that may belong to a footnote, to a number before a name or to
   * an abbreviation: a point stands behind no letter, a bracket at no end.
   */
  private static boolean isSimple(String text) {
    boolean afterLetter = false;
    char last = ' ';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x80 || SIGNS.indexOf(c) >= 0 || (c == '.' && afterLetter)) {
        return false;
      }
      afterLetter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
      last = c > ' ' ? c : last;
    }
    return last != ')' && last != ']' && !mayBeNumbered(text);
  }

  /** Whether it begins with a digit and has a sign with which a list is numbered. */
  private static boolean mayBeNumbered(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) <= ' ') {
      at++;
    }
    boolean digit = at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    return digit && (text.indexOf('.') >= 0 || text.indexOf(')') >= 0);
  }

  /** The same as the careful way, for the many texts of which it changes nothing. */
  private static List<String> simple(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    List<String> words = new ArrayList<>();
    int from = -1;
    for (int i = 0; i <= plain.length(); i++) {
      char c = i < plain.length() ? plain.charAt(i) : ' ';
      boolean isOfWord = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (isOfWord && from < 0) {
        from = i;
      } else if (!isOfWord && from >= 0) {
        words.add(plain.substring(from, i));
        from = -1;
      }
      if (c == '%' || c == '+') {
        words.add(String.valueOf(c));
      }
    }
    return List.copyOf(words);
  }

  static List<String> careful(String text) {
    String plain = SUPERSCRIPT.matcher(text).replaceAll(" ");
    plain = ENUMERATOR.matcher(FOOTNOTE.matcher(plain).replaceAll(" ").strip()).replaceFirst("");
    plain = Normalizer.normalize(plain, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    plain = MARKS.matcher(plain).replaceAll("").replace("\u00DF", "ss").replace('\u03BC', 'u');
    plain = plain.replace('&', '+');
    plain = DOTTED.matcher(plain).replaceAll(m -> undotted(m.group()));
    List<String> words = new ArrayList<>();
    var matcher = WORD.matcher(plain);
    while (matcher.find()) {
      words.add(matcher.group());
    }
    return List.copyOf(words);
  }

  private static String undotted(String abbreviation) {
    return " " + abbreviation.replace(".", "").replace(" ", "") + " ";
  }
}
