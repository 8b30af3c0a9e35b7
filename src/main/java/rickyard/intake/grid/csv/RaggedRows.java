package rickyard.intake.grid.csv;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Finds records that are not as wide as the head above them: a delimiter lost or won moves every
 * figure behind it below another name.
 */
final class RaggedRows {
  /** A head of fewer names may well stand over rows that leave their end out. */
  private static final int LEAST_NAMES = 4;

  private static final int LEAST_FIGURES = 2;
  private static final Pattern FIGURE = Pattern.compile("[<>]?\\s*\\d+(?:[.,]\\d+)?\\s*%?");

  private RaggedRows() {}

  /** Whether a record with figures has fewer or more fields than its head. */
  static boolean found(List<List<String>> records) {
    int head = 0;
    boolean headBefore = false;
    for (List<String> record : records) {
      boolean isHead = isHead(record);
      if (record.stream().allMatch(String::isBlank)) {
        head = 0;
      } else if (isHead) {
        // A second line of heads may be shorter than the first: units, bases.
        head = headBefore ? Math.max(head, record.size()) : record.size();
      } else if (head > 0 && record.size() != head && figures(record) >= LEAST_FIGURES) {
        return true;
      }
      headBefore = isHead;
    }
    return false;
  }

  private static boolean isHead(List<String> record) {
    long named = record.stream().filter(field -> !field.isBlank()).count();
    return named >= LEAST_NAMES && figures(record) == 0;
  }

  private static long figures(List<String> record) {
    return record.stream().filter(field -> FIGURE.matcher(field.strip()).matches()).count();
  }
}
