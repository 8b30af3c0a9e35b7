package rickyard.intake.interpret;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A row of the grid with its cells understood one by one.
 *
 * @param page page from 1
 * @param row row from 1
 * @param pieces from left to right
 */
record Line(int page, int row, List<Piece> pieces) {

  Line {
    pieces = List.copyOf(pieces);
  }

  boolean hasFigure() {
    return pieces.stream().anyMatch(p -> p.isFigure() && !p.isLabel());
  }

  String text() {
    return pieces.stream().map(Piece::text).collect(Collectors.joining(" "));
  }

  /** Whether some label is followed by a figure before the next label. */
  boolean isItem() {
    boolean open = false;
    for (Piece piece : pieces) {
      if (open && piece.result().isPresent()) {
        return true;
      }
      open |= piece.isLabel();
    }
    return false;
  }
}
