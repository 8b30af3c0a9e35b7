package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rickyard.intake.grid.Cell;

/** Joins headings and labels that run over two lines: 'Crude' over 'protein'. */
final class Wraps {
  private final Dictionary dictionary;
  private final Dialect dialect;
  private final boolean certain;

  Wraps(Dictionary dictionary, Dialect dialect, boolean certain) {
    this.dictionary = dictionary;
    this.dialect = dialect;
    this.certain = certain;
  }

  List<Line> joined(List<Line> lines) {
    List<Line> out = new ArrayList<>();
    for (Line line : lines) {
      Optional<Line> last =
          out.isEmpty() || out.get(out.size() - 1).page() != line.page()
              ? Optional.empty()
              : Optional.of(out.get(out.size() - 1));
      Optional<Line> both =
          last.flatMap(upper -> label(upper, line).or(() -> heading(upper, line)));
      if (both.isPresent()) {
        out.set(out.size() - 1, both.get());
      } else {
        out.add(line);
      }
    }
    return out;
  }

  /** 'Soluble' above 'protein 35': one label, and not that of the lower line. */
  private Optional<Line> label(Line upper, Line lower) {
    Piece first = lower.pieces().get(0);
    Piece above = upper.pieces().get(0);
    boolean open =
        upper.pieces().size() == 1
            && !above.isLabel()
            && !above.isFigure()
            && above.field().filter(FieldMark::marked).isEmpty()
            && lower.row() - upper.row() == 1
            && lower.hasFigure()
            && above.cell().overlap(first.cell()) > 0;
    if (!open) {
      return Optional.empty();
    }
    Optional<Label> whole = Label.read(dictionary, above.text() + " " + first.text());
    boolean other =
        whole
            .filter(w -> first.label().filter(f -> f.code().equals(w.code())).isEmpty())
            .isPresent();
    if (!other) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>(lower.pieces());
    pieces.set(0, join(above, first));
    return Optional.of(new Line(lower.page(), lower.row(), pieces));
  }

  /** Headings over two lines, where the lower words mean nothing by themselves. */
  private Optional<Line> heading(Line upper, Line lower) {
    boolean words =
        lower.row() - upper.row() == 1
            && upper.pieces().size() >= 2
            && lower.pieces().size() >= 2
            && none(upper)
            && none(lower)
            && lower.pieces().stream()
                .anyMatch(p -> !p.isLabel() && !p.isMark() && !p.isHeadingWord());
    if (!words) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>();
    Set<Piece> used = new LinkedHashSet<>();
    for (Piece piece : lower.pieces()) {
      Optional<Piece> over = Columns.over(upper.pieces(), piece.cell(), certain);
      over.ifPresent(used::add);
      Piece whole = over.map(o -> join(o, piece)).orElse(piece);
      if (!isUnderstood(whole)) {
        return Optional.empty();
      }
      pieces.add(whole);
    }
    return used.size() == upper.pieces().size()
        ? Optional.of(new Line(lower.page(), lower.row(), pieces))
        : Optional.empty();
  }

  private static boolean none(Line line) {
    return line.pieces().stream()
        .noneMatch(p -> p.isFigure() || p.field().filter(f -> !f.value().isEmpty()).isPresent());
  }

  private static boolean isUnderstood(Piece piece) {
    return piece.isLabel() || piece.isMark() || piece.isHeadingWord();
  }

  private Piece join(Piece upper, Piece lower) {
    Cell a = upper.cell();
    Cell b = lower.cell();
    Cell both =
        new Cell(
            a.text() + " " + b.text(),
            Math.min(a.left(), b.left()),
            Math.max(a.right(), b.right()),
            b.column());
    return Piece.of(dictionary, dialect, certain, lower.page(), lower.row(), both);
  }
}
