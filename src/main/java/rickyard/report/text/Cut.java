package rickyard.report.text;

/** Names that fit their cell: one line, and an ellipsis where one is too long. */
public final class Cut {
  private Cut() {}

  /** The name on one line with at most that many characters. */
  public static String line(String raw, int longest) {
    String line = Harmless.line(raw);
    if (line.codePointCount(0, line.length()) <= longest) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, longest - 1)) + "…";
  }

  /** The name, or the key where there is no name. */
  public static String name(String name, String key, int longest) {
    String line = line(name, longest);
    return line.isEmpty() ? line(key, longest) : line;
  }
}
