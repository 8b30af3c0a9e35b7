package rickyard.intake.interpret;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.intake.grid.Cell;

/** Which heading stands over which cell: by column number in a table, by position on a page. */
final class Columns {
  /** How far a figure may stand beside its heading without touching it, in points. */
  private static final double REACH = 14;

  private Columns() {}

  /** The piece of a line that stands over a cell. */
  static Optional<Piece> over(List<Piece> line, Cell cell, boolean certain) {
    if (certain) {
      return inColumn(line, cell.column());
    }
    Piece touching = null;
    for (Piece piece : line) {
      boolean touches = piece.cell().overlap(cell) > 0;
      if (touches && (touching == null || isMoreOver(piece, touching, cell))) {
        touching = piece;
      }
    }
    return touching == null ? near(line, cell) : Optional.of(touching);
  }

  private static Optional<Piece> inColumn(List<Piece> line, int column) {
    for (Piece piece : line) {
      if (piece.cell().column() == column) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }

  /** Of two with the same overlap the one whose right edge is nearer; of two such the earlier. */
  private static boolean isMoreOver(Piece piece, Piece other, Cell cell) {
    int overlap = Double.compare(piece.cell().overlap(cell), other.cell().overlap(cell));
    return overlap > 0
        || (overlap == 0 && rightEdges(piece.cell(), cell) < rightEdges(other.cell(), cell));
  }

  private static Optional<Piece> near(List<Piece> line, Cell cell) {
    Piece near = null;
    for (Piece piece : line) {
      if (gap(piece.cell(), cell) <= REACH) {
        if (near != null) {
          return Optional.empty();
        }
        near = piece;
      }
    }
    return Optional.ofNullable(near);
  }

  /**
   * The piece over a cell of a row: one that another cell of the row stands under is not taken from
   * it by a cell that merely stands beside.
   */
  static Optional<Piece> over(List<Piece> line, Cell cell, List<Piece> row, boolean certain) {
    Optional<Piece> over = over(line, cell, certain);
    if (certain || row.isEmpty() || over.filter(p -> p.cell().overlap(cell) > 0).isPresent()) {
      return over;
    }
    List<Piece> free =
        line.stream()
            .filter(p -> gap(p.cell(), cell) <= REACH)
            .filter(
                p ->
                    row.stream()
                        .noneMatch(r -> !r.cell().equals(cell) && p.cell().overlap(r.cell()) > 0))
            .toList();
    return free.size() == 1 ? Optional.of(free.get(0)) : Optional.empty();
  }

  /** The piece of an upper line that spans a cell: the one over it, else the nearest. */
  static Optional<Piece> spanning(List<Piece> line, Cell cell, boolean certain) {
    if (certain) {
      return line.stream()
          .filter(p -> p.cell().column() <= cell.column())
          .max(Comparator.comparingInt(p -> p.cell().column()));
    }
    Comparator<Piece> nearest =
        Comparator.comparingDouble((Piece p) -> gap(p.cell(), cell))
            .thenComparingDouble(p -> Math.abs(middle(p.cell()) - middle(cell)));
    return line.stream().min(nearest);
  }

  private static double rightEdges(Cell a, Cell b) {
    return Math.abs(a.right() - b.right());
  }

  static double gap(Cell a, Cell b) {
    return Math.max(0, Math.max(a.left() - b.right(), b.left() - a.right()));
  }

  private static double middle(Cell cell) {
    return (cell.left() + cell.right()) / 2;
  }
}
