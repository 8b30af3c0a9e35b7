package rickyard.intake.interpret;

import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.Map;
import rickyard.intake.grid.Cell;

/**
 * Understands the cells of one document; a text of one nature means the same wherever it stands.
 * Another document has another decimal mark and another legend, and so its own memory.
 */
final class Pieces {
  private static final int MOST_PLACED = 50_000;

  private final Piece.Reading reading;
  private final Map<Cell.Nature, Memo<Piece>> known = new EnumMap<>(Cell.Nature.class);

  private final IdentityHashMap<Cell, Piece> placed = new IdentityHashMap<>();

  Pieces(Piece.Reading reading) {
    this.reading = reading;
  }

  /** The piece of a cell; of a cell that stands in many rows it is the same piece each time. */
  Piece of(Cell cell) {
    Piece piece = placed.get(cell);
    if (piece == null) {
      piece = known.computeIfAbsent(cell.nature(), this::memo).of(cell.text()).at(cell);
      if (placed.size() >= MOST_PLACED) {
        placed.clear();
      }
      placed.put(cell, piece);
    }
    return piece;
  }

  private Memo<Piece> memo(Cell.Nature nature) {
    return new Memo<>(text -> Piece.of(reading, new Cell(text, 0, 1, 1, nature)));
  }
}
