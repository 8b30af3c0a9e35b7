package rickyard.intake.interpret;

import rickyard.intake.grid.Cell;

/** Understands the cells of a document; a text means the same wherever it stands. */
final class Pieces {
  private final Memo<Piece> known;

  Pieces(Piece.Reading reading) {
    known = new Memo<>(text -> Piece.of(reading, 1, 1, new Cell(text, 0, 1, 1)));
  }

  Piece of(int page, int row, Cell cell) {
    return known.of(cell.text()).at(page, row, cell);
  }
}
