package rickyard.cli;

import java.util.ArrayList;
import java.util.List;
import rickyard.report.text.Harmless;

/** Text in lines of at most 80 columns; what follows the first line is set in under it. */
final class Wrapped {
  static final int WIDTH = 80;

  private Wrapped() {}

  /** Nothing in it steers a terminal or turns the direction of writing. */
  private static String plain(String text) {
    return Harmless.text(text.replaceAll("\\p{Cntrl}", " "));
  }

  /** The lines; control characters become spaces, so that no cell's text moves the cursor. */
  static List<String> lines(String text) {
    String plain = plain(text).stripTrailing();
    String indent = plain.substring(0, plain.length() - plain.stripLeading().length());
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(indent);
    for (String word : plain.strip().split(" ", -1)) {
      boolean first = line.toString().isBlank();
      if (!first && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(indent + "  ");
        first = true;
      }
      line.append(first ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The lines of a column that starts elsewhere; a word that is wider alone is cut. */
  static List<String> column(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : plain(text).strip().split(" +", -1)) {
      String fitting = cut(word, width);
      if (line.length() > 0 && line.length() + 1 + fitting.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(fitting);
    }
    lines.add(line.toString());
    return lines;
  }

  /** A text cut to a column's width. */
  static String cut(String text, int width) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= width ? plain : plain.substring(0, width - 1) + "…";
  }
}
