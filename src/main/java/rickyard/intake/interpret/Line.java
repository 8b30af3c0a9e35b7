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
    for (Piece piece : pieces) {
      if (piece.isFigure() && !piece.isLabel()) {
        return true;
      }
    }
    return false;
  }

  /** Whether no cell may say anything beyond itself. */
  boolean isSilent() {
    for (Piece piece : pieces) {
      if (piece.voice() != Voice.SILENT) {
        return false;
      }
    }
    return true;
  }

  /** Whether it may hold a definition or a note of units. */
  boolean mayDefine() {
    for (Piece piece : pieces) {
      if (piece.voice() == Voice.OPEN) {
        return true;
      }
    }
    return false;
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
