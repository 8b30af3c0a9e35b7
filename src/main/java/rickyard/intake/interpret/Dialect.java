package rickyard.intake.interpret;

import java.util.List;

/** How a document writes its decimal mark, decided from all its numbers together. */
enum Dialect {
  /** Decimal point; comma between thousands. */
  POINT,
  /** Decimal comma; point between thousands. */
  COMMA,
  /** No number tells. */
  OPEN,
  /** Numbers contradict each other. */
  MIXED;

  /** The dialect that all figures allow; a figure with one mark and three digits tells nothing. */
  static Dialect of(List<String> figures) {
    boolean point = false;
    boolean comma = false;
    for (String figure : figures) {
      for (String number : Numerals.numbersIn(figure)) {
        Dialect says = says(number);
        point |= says == POINT;
        comma |= says == COMMA;
      }
    }
    if (point && comma) {
      return MIXED;
    }
    return point ? POINT : comma ? COMMA : OPEN;
  }

  private static Dialect says(String number) {
    int points = count(number, '.');
    int commas = count(number, ',');
    if (points == 0 && commas == 0) {
      return OPEN;
    }
    if (points > 0 && commas > 0) {
      return number.lastIndexOf('.') > number.lastIndexOf(',') ? POINT : COMMA;
    }
    char mark = points > 0 ? '.' : ',';
    Dialect asDecimal = points > 0 ? POINT : COMMA;
    if (points + commas > 1) {
      return asDecimal == POINT ? COMMA : POINT;
    }
    int at = number.indexOf(mark);
    String before = number.substring(0, at);
    boolean mayBeThousands =
        number.length() - at - 1 == 3
            && before.length() >= 1
            && before.length() <= 3
            && !before.startsWith("0");
    return mayBeThousands ? OPEN : asDecimal;
  }

  static int count(String text, char mark) {
    int count = 0;
    for (int i = 0; i < text.length(); i++) {
      count += text.charAt(i) == mark ? 1 : 0;
    }
    return count;
  }
}
