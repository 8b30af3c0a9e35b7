package rickyard.tables;

import static java.util.Objects.requireNonNull;

/**
 * Something wrong in a table or register.
 *
 * @param file file name, without folders
 * @param row row of the file from 1, comments and header counted; 0 for the file as a whole
 * @param column heading of the column; empty for the row as a whole
 * @param code stable code
 * @param expected what would be accepted
 * @param found what stands there, cut and without control characters
 */
public record TableProblem(
    String file, int row, String column, String code, String expected, String found) {

  private static final int SHOWN = 60;

  public TableProblem {
    requireNonNull(file, "file");
    requireNonNull(column, "column");
    requireNonNull(code, "code");
    requireNonNull(expected, "expected");
    found = shown(found);
  }

  /** One sentence: {@code limits.csv, row 17, column "value": expected a number, found "x"}. */
  public String message() {
    String place =
        (row > 0 ? ", row " + row : "") + (column.isEmpty() ? "" : ", column \"" + column + "\"");
    return file + place + ": expected " + expected + ", found \"" + found + "\"";
  }

  private static String shown(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(SHOWN)
        .forEach(
            c -> {
              if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
                out.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return text.codePointCount(0, text.length()) > SHOWN ? out + "…" : out.toString();
  }
}
