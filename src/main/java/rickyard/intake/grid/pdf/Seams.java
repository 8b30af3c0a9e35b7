package rickyard.intake.grid.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * Where two neighbours of a line were drawn apart from one another, as columns are that stand
 * close.
 *
 * <p>A seam alone says little: some programs place every word by itself. With an edge of the text
 * in another line exactly above or below it, it is the border of a column.
 */
final class Seams {
  private static final double WORD_GAP = 0.5;
  private static final double EXACT = 1.0;

  private Seams() {}

  /** Divides a group at word gaps that are seams and edges of a column in another line. */
  static List<List<Glyph>> divided(
      List<Glyph> group, List<Glyph> blanks, List<List<List<Glyph>>> lines, int line) {
    List<List<Glyph>> pieces = new ArrayList<>();
    pieces.add(new ArrayList<>());
    Glyph before = null;
    for (Glyph glyph : group) {
      if (before != null
          && glyph.left() - before.right() > WORD_GAP * glyph.space()
          && isSeam(before, glyph, blanks)
          && isEdge(before.right(), glyph.left(), lines, line)) {
        pieces.add(new ArrayList<>());
      }
      pieces.get(pieces.size() - 1).add(glyph);
      before = glyph;
    }
    return pieces;
  }

  /** Not drawn in one go: others came between, or the right one was drawn first. */
  private static boolean isSeam(Glyph before, Glyph next, List<Glyph> blanks) {
    long between =
        blanks.stream()
            .filter(b -> b.middle() > before.right() - 0.5 && b.middle() < next.left() + 0.5)
            .count();
    int step = next.order() - before.order();
    return step < 1 || step > 1 + between;
  }

  private static boolean isEdge(double end, double start, List<List<List<Glyph>>> lines, int line) {
    for (int other = 0; other < lines.size(); other++) {
      if (other != line) {
        for (List<Glyph> group : lines.get(other)) {
          double left = group.get(0).left();
          double right = group.get(group.size() - 1).right();
          if (Math.abs(left - start) < EXACT || Math.abs(right - end) < EXACT) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Two digits or marks of a number that were drawn apart and stand neither apart nor together. */
  static boolean isDoubtful(Glyph before, Glyph next, double gap) {
    int step = next.order() - before.order();
    boolean apart = step != 1;
    return apart && gap > 0.1 * next.space() && isOfNumber(before) && isOfNumber(next);
  }

  private static boolean isOfNumber(Glyph glyph) {
    char c = glyph.text().charAt(0);
    return Character.isDigit(c) || c == '.' || c == ',';
  }
}
