package rickyard.intake.grid.csv;

import java.util.ArrayList;
import java.util.List;
import rickyard.intake.grid.CellText;

/** Lines divided by runs of spaces or leader dots; a character's place in its line is its x. */
final class Listing {
  private static final int TAB = 8;

  /**
   * A run of text in a line.
   *
   * @param text stripped
   * @param from first character from 0
   * @param to behind the last character
   */
  record Piece(String text, int from, int to) {}

  private Listing() {}

  /** Splits at two or more spaces and at leaders of three or more dots. */
  static List<Piece> pieces(String raw) {
    String line = withoutLeaders(expanded(raw));
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    while (at < line.length()) {
      while (at < line.length() && line.charAt(at) == ' ') {
        at++;
      }
      int from = at;
      int end = at;
      while (at < line.length() && !line.startsWith("  ", at)) {
        at++;
        end = line.charAt(at - 1) == ' ' ? end : at;
      }
      // A colon at the head of a value belongs to the name before it.
      while (!pieces.isEmpty()
          && from < end
          && (line.charAt(from) == ':' || line.charAt(from) == ' ')) {
        from++;
      }
      String text = CellText.plain(line.substring(from, end));
      if (!text.isEmpty()) {
        pieces.add(new Piece(text, from, end));
      }
    }
    return pieces;
  }

  private static String expanded(String raw) {
    StringBuilder out = new StringBuilder();
    for (int at = 0; at < raw.length(); at++) {
      char c = raw.charAt(at);
      if (c == '\t') {
        do {
          out.append(' ');
        } while (out.length() % TAB != 0);
      } else {
        out.append(Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c);
      }
    }
    return out.toString();
  }

  /**
   * Blanks leaders out. A leader that touches a digit may end in a decimal point: it is left alone,
   * so that no number can be read there, unless the number has a point of its own.
   */
  private static String withoutLeaders(String line) {
    StringBuilder out = new StringBuilder(line);
    int at = 0;
    while (at < line.length()) {
      int end = leaderEnd(line, at);
      if (end - at >= 3 && dots(line, at, end) >= 3) {
        if (!endsAsPoint(line, end)) {
          for (int dot = at; dot < end; dot++) {
            out.setCharAt(dot, ' ');
          }
        }
        at = end;
      } else {
        at = Math.max(at + 1, end);
      }
    }
    return out.toString();
  }

  /** Behind a run of dots that stand side by side or one space apart. */
  private static int leaderEnd(String line, int from) {
    int end = from;
    while (end < line.length() && isLeader(line.charAt(end))) {
      end++;
      boolean spaced =
          end + 1 < line.length() && line.charAt(end) == ' ' && isLeader(line.charAt(end + 1));
      end += spaced ? 1 : 0;
    }
    return end;
  }

  private static boolean isLeader(char c) {
    return c == '.' || c == '…' || c == '·' || c == '_';
  }

  private static int dots(String line, int from, int to) {
    int dots = 0;
    for (int at = from; at < to; at++) {
      dots += line.charAt(at) == '…' ? 3 : line.charAt(at) == ' ' ? 0 : 1;
    }
    return dots;
  }

  private static boolean endsAsPoint(String line, int end) {
    if (end >= line.length()
        || !Character.isDigit(line.charAt(end))
        || line.charAt(end - 1) != '.') {
      return false;
    }
    int at = end;
    while (at < line.length() && Character.isDigit(line.charAt(at))) {
      at++;
    }
    boolean ownPoint =
        at + 1 < line.length()
            && (line.charAt(at) == '.' || line.charAt(at) == ',')
            && Character.isDigit(line.charAt(at + 1));
    return !ownPoint;
  }
}
