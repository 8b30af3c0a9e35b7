package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tables whose results stand left of the names of the analytes: 'Result | Unit | Test'. Their rows
 * are turned so that the name comes first; the cells keep their places on the page.
 */
final class LabelsLast {
  private final boolean certain;
  private Optional<Line> head = Optional.empty();

  LabelsLast(boolean certain) {
    this.certain = certain;
  }

  List<Line> turned(List<Line> lines) {
    List<Line> out = new ArrayList<>();
    for (Line line : lines) {
      if (isHead(line)) {
        head = isTurned(line) ? Optional.of(line) : Optional.empty();
        out.add(line);
      } else {
        out.add(head.map(h -> row(line, h)).orElse(line));
      }
    }
    return out;
  }

  private static boolean isHead(Line line) {
    return find(line, "analyte").isPresent() && find(line, "result").isPresent();
  }

  private static boolean isTurned(Line line) {
    return find(line, "result").orElseThrow().cell().left()
        < find(line, "analyte").orElseThrow().cell().left();
  }

  private static Optional<Piece> find(Line line, String role) {
    for (Piece piece : line.pieces()) {
      if (piece.heading().isWhole() && piece.heading().has(Kind.ROLE, role)) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }

  private Line row(Line line, Line over) {
    Piece names = find(over, "analyte").orElseThrow();
    List<Piece> labels =
        line.pieces().stream()
            .filter(Piece::isLabel)
            .filter(
                p ->
                    Columns.over(over.pieces(), p.cell(), certain)
                        .filter(names::equals)
                        .isPresent())
            .toList();
    if (labels.size() != 1 || line.pieces().get(0).equals(labels.get(0))) {
      return line;
    }
    List<Piece> pieces = new ArrayList<>(line.pieces());
    pieces.remove(labels.get(0));
    pieces.add(0, labels.get(0));
    return new Line(line.page(), line.row(), pieces);
  }
}
