package rickyard.intake.interpret;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.intake.grid.CellText;
import rickyard.intake.interpret.Figure.Form;

/**
 * The numbers of a report, read strictly: ASCII digits, one decimal mark, the whole cell or
 * nothing.
 *
 * <p>A letter among digits, two numbers in one cell, a minus sign or a mark that may be decimal or
 * thousands is trouble, never a guess.
 */
final class Numerals {
  private static final String GAP = "[\u00A0\u202F\u2009'\u2019 ]";
  private static final String NUMBER =
      "(?:[0-9]{1,3}(?:"
          + GAP
          + "[0-9]{3})+(?:[.,][0-9]+)?|[0-9]{1,3}(?:\\.[0-9]{3}){2,}(?:,[0-9]+)?"
          + "|[0-9]{1,3}(?:,[0-9]{3}){2,}(?:\\.[0-9]+)?|[0-9]{1,3}\\.[0-9]{3},[0-9]+"
          + "|[0-9]{1,3},[0-9]{3}\\.[0-9]+|[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)";
  private static final String POWER =
      "(?:[eE][+-]?[0-9]{1,2}|\\s?[x\u00D7*\u00B7]\\s?10\\s?\\^?\\s?[+-]?[0-9]{1,2})";

  /** The number is taken whole or not at all: no second look may end it at a gap within it. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?<sign>[<>\u2264\u2265\u2039\u203A]=?|[-\u2212\u2013](?=[0-9])|[~\u2248])?\\s*"
              + "(?<number>(?>"
              + NUMBER
              + "))(?<power>"
              + POWER
              + ")?(?<spread>\\s*(?:\u00B1|\\+/-)\\s*[0-9]+(?:[.,][0-9]+)?)?"
              + "(?<note>\\s?[*\u2020\u2021\u00A7#^\u00B9\u00B2\u00B3\u2070-\u2079]+"
              + "|\\s?\\([a-z1-9]\\))?(?<rest>(?![0-9.,\\p{M}]).*)?",
          Pattern.DOTALL);

  private static final Pattern RANGE =
      Pattern.compile(
          NUMBER + "\\s*(?:-|\u2013|\u2014|\u2212|\\.\\.+|to|bis)\\s*" + NUMBER + "(?<rest>.*)",
          Pattern.DOTALL);
  private static final Pattern LETTERED =
      Pattern.compile(
          "(?=.*[0-9])(?=.*[OoIlSBZ|])(?=[0-9<>]|[0-9OoIlSBZ|]+[.,])[<>]?\\s*[0-9OoIlSBZ|]*[.,]?[0-9OoIlSBZ|]+\\s*%?");

  /** A figure with a character that could not be read: it may have been a digit or its end. */
  private static final Pattern UNREADABLE =
      Pattern.compile("(?=.*" + CellText.UNKNOWN + ")[^\\p{L}]*[0-9].*", Pattern.DOTALL);

  private static final int LONGEST_CELL = 80;
  private static final int LONGEST_NUMBER = 16;
  private static final Pattern ANY_NUMBER = Pattern.compile(NUMBER);
  private static final Pattern GAPS = Pattern.compile(GAP);
  private static final Pattern WITH_POINT = wellFormed(".", ",");
  private static final Pattern WITH_COMMA = wellFormed(",", ".");
  private static final Pattern BLANKS = Pattern.compile("[-\u2013\u2014\u2212./]{1,4}|\\.{2,}");

  private Numerals() {}

  /** The numbers in a cell that is a figure, as printed. */
  static List<String> numbersIn(String text) {
    if (text.length() > LONGEST_CELL || !hasDigit(text)) {
      return List.of();
    }
    Matcher plain = PLAIN.matcher(text.strip());
    List<String> numbers = new ArrayList<>();
    if (RANGE.matcher(text.strip()).matches()) {
      Matcher each = ANY_NUMBER.matcher(text);
      while (each.find()) {
        numbers.add(each.group());
      }
    } else if (plain.matches()) {
      numbers.add(plain.group("number"));
    }
    return numbers;
  }

  /**
   * The figure in a cell; empty if the cell is not one.
   *
   * @param raw the cell's text
   * @param dialect the document's
   * @param certain whether the cell's borders are certain, so that a gap inside a number is a
   *     thousands mark and not the space between two columns
   */
  static Optional<Figure> read(String raw, Dialect dialect, boolean certain) {
    String text = raw.strip();
    if (text.length() > LONGEST_CELL) {
      return Optional.empty();
    }
    if (BLANKS.matcher(text).matches()) {
      return Optional.of(Figure.word(Form.ABSENT));
    }
    if (!hasDigit(text)) {
      return Optional.empty();
    }
    if (UNREADABLE.matcher(text).matches()) {
      return Optional.of(Figure.troubled("letters-in-number", "", ""));
    }
    if (LETTERED.matcher(text).matches()) {
      return Optional.of(Figure.troubled("letters-in-number", digits(text), ""));
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return Optional.of(Figure.troubled("range-printed", "", range.group("rest").strip()));
    }
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      return Optional.of(plain(plain, dialect, certain));
    }
    return Optional.empty();
  }

  /** Whether there is an ASCII digit; without one it is no number and no number gone wrong. */
  private static boolean hasDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        return true;
      }
    }
    return false;
  }

  private static String digits(String text) {
    return text.replaceAll("[Oo]", "0")
        .replaceAll("[Il|]", "1")
        .replace('S', '5')
        .replace('B', '8')
        .replace('Z', '2')
        .replace("%", "")
        .strip();
  }

  private static Figure plain(Matcher match, Dialect dialect, boolean certain) {
    String rest = match.group("rest") == null ? "" : match.group("rest").strip();
    String sign = match.group("sign") == null ? "" : match.group("sign");
    String number = match.group("number");
    if (!sign.isEmpty() && "-\u2212\u2013".contains(sign)) {
      return Figure.troubled("negative-number", "", rest);
    }
    if ("~\u2248".contains(sign) && !sign.isEmpty()) {
      return Figure.troubled("approximate-number", number, rest);
    }
    if (number.indexOf(' ') >= 0 && !certain) {
      return Figure.troubled("number-ambiguous", number.replace(" ", ""), rest);
    }
    if (number.length() > LONGEST_NUMBER) {
      return Figure.troubled("number-ambiguous", "", rest);
    }
    String trouble = markTrouble(ungapped(number), dialect);
    if (!trouble.isEmpty()) {
      return Figure.troubled(trouble, "", rest);
    }
    int power = power(match.group("power"));
    BigDecimal value = new BigDecimal(plainDigits(number, dialect));
    BigDecimal half = BigDecimal.valueOf(5).movePointLeft(Math.max(0, value.scale()) + 1);
    return new Figure(
        form(sign), value.scaleByPowerOfTen(power), half.scaleByPowerOfTen(power), rest, "", "");
  }

  private static Form form(String sign) {
    if (sign.isEmpty()) {
      return Form.NUMBER;
    }
    return "<\u2264\u2039".indexOf(sign.charAt(0)) >= 0 ? Form.BELOW : Form.ABOVE;
  }

  private static String markTrouble(String number, Dialect dialect) {
    boolean marked = number.indexOf('.') >= 0 || number.indexOf(',') >= 0;
    if (!marked) {
      return "";
    }
    return switch (dialect) {
      case MIXED -> "decimal-mark-mixed";
      case OPEN -> "number-ambiguous";
      case POINT -> WITH_POINT.matcher(number).matches() ? "" : "number-ambiguous";
      case COMMA -> WITH_COMMA.matcher(number).matches() ? "" : "number-ambiguous";
    };
  }

  private static Pattern wellFormed(String decimal, String thousands) {
    String d = Pattern.quote(decimal);
    String t = Pattern.quote(thousands);
    return Pattern.compile(
        "[0-9]*(" + d + "[0-9]+)?|[1-9][0-9]{0,2}(" + t + "[0-9]{3})+(" + d + "[0-9]+)?");
  }

  private static String ungapped(String number) {
    return GAPS.matcher(number).replaceAll("");
  }

  private static String plainDigits(String number, Dialect dialect) {
    String bare = ungapped(number);
    String pointed =
        dialect == Dialect.COMMA ? bare.replace(".", "").replace(',', '.') : bare.replace(",", "");
    return pointed.startsWith(".") ? "0" + pointed : pointed;
  }

  private static int power(@org.jspecify.annotations.Nullable String text) {
    if (text == null) {
      return 0;
    }
    String digits = text.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    String power =
        digits.startsWith("e") ? digits.substring(1) : digits.substring(3).replace("^", "");
    return Integer.parseInt(power.startsWith("+") ? power.substring(1) : power);
  }
}
