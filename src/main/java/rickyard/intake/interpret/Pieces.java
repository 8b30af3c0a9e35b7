package rickyard.intake.interpret;

import java.util.EnumMap;
import java.util.Map;
import rickyard.intake.grid.Cell;

/**
 * Understands the cells of one document; a text of one nature means the same wherever it stands.
 * Another document has another decimal mark and another legend, and so its own memory.
 */
final class Pieces {
  private final Piece.Reading reading;
  private final Map<Cell.Nature, Memo<Piece>> known = new EnumMap<>(Cell.Nature.class);

  Pieces(Piece.Reading reading) {
    this.reading = reading;
  }

  Piece of(int page, int row, Cell cell) {
    return known.computeIfAbsent(cell.nature(), this::memo).of(cell.text()).at(page, row, cell);
  }

  private Memo<Piece> memo(Cell.Nature nature) {
    return new Memo<>(text -> Piece.of(reading, 1, 1, new Cell(text, 0, 1, 1, nature)));
  }
}
