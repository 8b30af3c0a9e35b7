package rickyard.tables;

/**
 * The apostrophe that keeps a spreadsheet from running a cell's text as a formula, and its removal
 * when one of our files is read back.
 *
 * <p>Text that starts with {@code = + - @}, tab or carriage return gets one apostrophe in front; so
 * does text that starts with apostrophes followed by one of these, so that the removal is exact:
 * {@code strip(protect(t))} is {@code t} for every text.
 */
public final class FormulaGuard {
  private static final String TRIGGERS = "=+-@\t\r";

  private FormulaGuard() {}

  /** The text with an apostrophe in front where a spreadsheet would see a formula. */
  public static String protect(String text) {
    return isRisky(text) ? "'" + text : text;
  }

  /** The text without the apostrophe that {@link #protect} put there; any other text as it is. */
  public static String strip(String text) {
    return text.startsWith("'") && isRisky(text) ? text.substring(1) : text;
  }

  private static boolean isRisky(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) == '\'') {
      at++;
    }
    return at < text.length() && TRIGGERS.indexOf(text.charAt(at)) >= 0;
  }
}
