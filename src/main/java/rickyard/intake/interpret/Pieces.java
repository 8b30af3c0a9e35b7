package rickyard.intake.interpret;

import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.Map;
import rickyard.intake.grid.Cell;

/**
 * Understands the cells of one document; a text of one nature means the same wherever it stands.
 * What another document may mean otherwise, by its decimal mark, its legend or its key, is read for
 * it anew.
 */
final class Pieces {
  private static final int MOST_PLACED = 50_000;

  private final Piece.Reading reading;
  private final CellTexts texts;
  private final Map<Cell.Nature, Memo<Piece>> known = new EnumMap<>(Cell.Nature.class);

  private final IdentityHashMap<Cell, Piece> placed = new IdentityHashMap<>();

  Pieces(Piece.Reading reading, CellTexts texts) {
    this.reading = reading;
    this.texts = texts;
  }

  /** The piece of a cell; of a cell that stands in many rows it is the same piece each time. */
  Piece of(Cell cell) {
    Piece piece = placed.get(cell);
    if (piece == null) {
      piece = memo(cell.nature()).of(cell.text()).at(cell);
      if (placed.size() >= MOST_PLACED) {
        placed.clear();
      }
      placed.put(cell, piece);
    }
    return piece;
  }

  private Memo<Piece> memo(Cell.Nature nature) {
    Memo<Piece> memo = known.get(nature);
    if (memo == null) {
      memo = texts.pieces(reading, nature);
      known.put(nature, memo);
    }
    return memo;
  }
}
