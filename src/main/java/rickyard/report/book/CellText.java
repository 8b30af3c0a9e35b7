package rickyard.report.book;

import java.util.regex.Pattern;

/** Text as a cell of a workbook keeps it. */
final class CellText {
  /** What a cell of a spreadsheet can hold; the CSV file holds all. */
  private static final int LONGEST = 32_767;

  /** In a workbook {@code _x000D_} stands for a character: a text that looks so is marked. */
  private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {}

  static String of(String text) {
    String marked = ESCAPE.matcher(cut(text)).replaceAll("_x005F_");
    return marked.replace("\r", "_x000D_");
  }

  private static String cut(String text) {
    if (text.length() <= LONGEST) {
      return text;
    }
    int end = LONGEST - 1;
    return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + "…";
  }
}
