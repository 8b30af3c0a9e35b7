package rickyard.intake.interpret;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Figures in little boxes, each with its name beneath: a line of figures alone, then a line of as
 * many names, one under each. Read as a table whose head stands below its row; otherwise the names
 * would take the figures of the next row of boxes.
 */
final class Tiles {
  private final boolean certain;
  private boolean begun;

  Tiles(boolean certain) {
    this.certain = certain;
  }

  /** Whether two lines are such a row; a single box counts once rows of several have been seen. */
  boolean arePair(Line figures, Line names) {
    int boxes = figures.pieces().size();
    boolean shape =
        figures.page() == names.page()
            && boxes == names.pieces().size()
            && (boxes >= 2 || begun)
            && figures.pieces().stream().allMatch(Tiles::isFigureAlone)
            && names.pieces().stream().allMatch(p -> p.isLabel() && !p.isFigure());
    if (!shape || !isOneUnderEach(figures.pieces(), names.pieces())) {
      return false;
    }
    begun = true;
    return true;
  }

  private static boolean isFigureAlone(Piece piece) {
    return piece.isFigure() && !piece.isLabel() && piece.field().isEmpty();
  }

  private boolean isOneUnderEach(List<Piece> figures, List<Piece> names) {
    Set<Piece> met = new HashSet<>();
    for (Piece figure : figures) {
      Optional<Piece> name = Columns.over(names, figure.cell(), certain);
      if (name.isEmpty() || !met.add(name.get())) {
        return false;
      }
    }
    return true;
  }
}
