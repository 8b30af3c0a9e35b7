package rickyard.registers;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How the numbers of one file are written. Files with commas between cells use a decimal point. In
 * files with semicolons or tabs the decimal comma is read when the whole file uses it; a cell such
 * as {@code 1.200} or {@code 1,200} whose mark may group thousands is read only where other cells
 * of the file settle the mark.
 */
enum DecimalMark {
  POINT("a decimal number with a point"),
  COMMA("a decimal number with a comma, as elsewhere in this file"),
  MIXED("a decimal number with the same mark in the whole file"),
  UNSETTLED("a decimal number that cannot be mistaken for thousands");

  private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,15}");
  private static final Pattern WITH_POINT = Pattern.compile("-?[0-9]{1,15}\\.[0-9]{1,15}");
  private static final Pattern WITH_COMMA = Pattern.compile("-?[0-9]{1,15},[0-9]{1,15}");
  private static final Pattern MAY_GROUP = Pattern.compile("-?[1-9][0-9]{0,2}[.,][0-9]{3}");

  private final String expected;

  DecimalMark(String expected) {
    this.expected = expected;
  }

  /** What a cell of such a file must hold, in words. */
  String expected() {
    return expected;
  }

  /** Decides the mark of a file with semicolons or tabs from its cells of numbers. */
  static DecimalMark of(Stream<String> cells) {
    boolean[] sure = new boolean[2];
    cells
        .filter(cell -> !MAY_GROUP.matcher(cell).matches())
        .forEach(
            cell -> {
              sure[0] |= WITH_POINT.matcher(cell).matches();
              sure[1] |= WITH_COMMA.matcher(cell).matches();
            });
    if (sure[0] && sure[1]) {
      return MIXED;
    }
    return sure[0] ? POINT : sure[1] ? COMMA : UNSETTLED;
  }

  /** The number, or empty where the text is none in a file of this kind. */
  OptionalDouble parse(String text) {
    if (!isNumber(text)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
  }

  private boolean isNumber(String text) {
    if (WHOLE.matcher(text).matches()) {
      return true;
    }
    if (this == COMMA) {
      return WITH_COMMA.matcher(text).matches();
    }
    boolean point = WITH_POINT.matcher(text).matches();
    return point && (this == POINT || !MAY_GROUP.matcher(text).matches());
  }

  /** Half of the last printed digit: 9.4 is 0.05, 350 is 0.5. */
  static double halfWidth(String number) {
    int mark = Math.max(number.indexOf('.'), number.indexOf(','));
    int decimals = mark < 0 ? 0 : number.length() - mark - 1;
    return 0.5 * Double.parseDouble("1e-" + decimals);
  }
}
