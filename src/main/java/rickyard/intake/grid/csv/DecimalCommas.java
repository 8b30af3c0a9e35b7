package rickyard.intake.grid.csv;

import java.util.List;
import java.util.regex.Pattern;

/** Finds tables in which figures with decimal commas were divided by commas without quotes. */
final class DecimalCommas {
  private static final Pattern WHOLE = Pattern.compile("[<>]?\\s*[-+]?\\d+");
  private static final Pattern DIGITS = Pattern.compile("\\d+");

  private DecimalCommas() {}

  /**
   * Whether a record below a head of names is wider than the head, by no more than it has
   * neighbouring whole numbers that could be the two halves of one figure.
   */
  static boolean suspected(List<List<String>> records) {
    int head = 0;
    for (List<String> record : records) {
      int width = width(record);
      if (width == 0) {
        head = 0;
      } else if (width > 1 && record.stream().noneMatch(DecimalCommas::hasDigit)) {
        head = width;
      } else if (head > 0 && width > head && pairs(record) >= width - head) {
        return true;
      }
    }
    return false;
  }

  /** Fields up to the last that is not blank. */
  private static int width(List<String> record) {
    int width = record.size();
    while (width > 0 && record.get(width - 1).isBlank()) {
      width--;
    }
    return width;
  }

  private static int pairs(List<String> record) {
    int pairs = 0;
    for (int at = 1; at < record.size(); at++) {
      boolean pair =
          WHOLE.matcher(record.get(at - 1).strip()).matches()
              && DIGITS.matcher(record.get(at)).matches();
      pairs += pair ? 1 : 0;
    }
    return pairs;
  }

  private static boolean hasDigit(String field) {
    return field.chars().anyMatch(Character::isDigit);
  }
}
