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

  /**
   * Whether a record with figures has fewer or more fields than a head above it, or the lines of
   * its head are not alike.
   */
  static boolean found(List<List<String>> records) {
    int head = 0;
    boolean uneven = false;
    boolean headBefore = false;
    for (List<String> record : records) {
      boolean isHead = isHead(record);
      if (isBlank(record)) {
        head = 0;
      } else if (isHead) {
        uneven = headBefore && (uneven || record.size() != head);
        head = record.size();
      } else if (head > 0
          && figures(record) >= LEAST_FIGURES
          && (uneven || record.size() != head)) {
        return true;
      }
      headBefore = isHead;
    }
    return false;
  }

  private static boolean isHead(List<String> record) {
    long named = 0;
    for (String field : record) {
      named += field.isBlank() ? 0 : 1;
    }
    return named >= LEAST_NAMES && figures(record) == 0;
  }

  private static long figures(List<String> record) {
    long figures = 0;
    for (String field : record) {
      figures += isFigure(field.strip()) ? 1 : 0;
    }
    return figures;
  }

  private static boolean isFigure(String text) {
    if (text.isEmpty()) {
      return false;
    }
    char last = text.charAt(text.length() - 1);
    boolean mayBe = last == '%' || (last >= '0' && last <= '9');
    return mayBe && FIGURE.matcher(text).matches();
  }

  private static boolean isBlank(List<String> record) {
    for (String field : record) {
      if (!field.isBlank()) {
        return false;
      }
    }
    return true;
  }
}
