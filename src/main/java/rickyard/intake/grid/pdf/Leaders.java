package rickyard.intake.grid.pdf;

import java.util.ArrayList;
import java.util.List;

/** Takes dotted leaders out of a line, so that only the gap stays. */
final class Leaders {
  private static final int LEAST = 3;

  private Leaders() {}

  static List<Glyph> removed(List<Glyph> glyphs) {
    List<Glyph> kept = new ArrayList<>();
    int at = 0;
    while (at < glyphs.size()) {
      int end = at;
      while (end < glyphs.size() && isLeader(glyphs, at, end)) {
        end++;
      }
      if (dots(glyphs, at, end) < LEAST || endsAsPoint(glyphs, end)) {
        end = Math.max(end, at + 1);
        kept.addAll(glyphs.subList(at, end));
      }
      at = end;
    }
    return kept;
  }

  private static boolean isLeader(List<Glyph> glyphs, int from, int at) {
    Glyph glyph = glyphs.get(at);
    return isDotted(glyph.text())
        && (at == from || glyph.left() - glyphs.get(at - 1).right() < glyph.size());
  }

  private static boolean isDotted(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (".…·_".indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    return true;
  }

  private static int dots(List<Glyph> glyphs, int from, int to) {
    int dots = 0;
    for (int at = from; at < to; at++) {
      String text = glyphs.get(at).text();
      dots += text.equals("…") ? LEAST : text.length();
    }
    return dots;
  }

  /**
   * Whether the last dot may be the decimal point of the figure behind it: it touches a digit and
   * the figure has no point of its own.
   */
  private static boolean endsAsPoint(List<Glyph> glyphs, int end) {
    if (end >= glyphs.size() || !isDigit(glyphs.get(end)) || !touches(glyphs, end)) {
      return false;
    }
    int at = end + 1;
    while (at < glyphs.size() && isDigit(glyphs.get(at)) && touches(glyphs, at)) {
      at++;
    }
    boolean ownPoint =
        at + 1 < glyphs.size()
            && (glyphs.get(at).text().equals(".") || glyphs.get(at).text().equals(","))
            && isDigit(glyphs.get(at + 1))
            && touches(glyphs, at + 1);
    return !ownPoint;
  }

  private static boolean touches(List<Glyph> glyphs, int at) {
    return at > 0
        && glyphs.get(at).left() - glyphs.get(at - 1).right() < 0.15 * glyphs.get(at).size();
  }

  private static boolean isDigit(Glyph glyph) {
    return Character.isDigit(glyph.text().codePointAt(0));
  }
}
