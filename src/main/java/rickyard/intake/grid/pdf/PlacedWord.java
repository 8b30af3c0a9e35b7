package rickyard.intake.grid.pdf;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/**
 * A word that something else than a PDF placed on a page, in points.
 *
 * @param text the word
 * @param left left edge
 * @param right right edge, above {@code left}
 * @param base baseline, downwards from the top
 * @param size font size, above 0
 */
public record PlacedWord(String text, double left, double right, double base, double size) {
  /** Width of a blank as a share of the font size, wide enough for boxes that are not exact. */
  private static final double SPACE = 0.35;

  public PlacedWord {
    requireNonNull(text, "text");
  }

  /** Words as lines of cells, divided by the same rules as the text of a PDF. */
  public static Optional<Page> page(int number, List<PlacedWord> words) {
    List<Glyph> glyphs = new ArrayList<>();
    for (PlacedWord word : words) {
      glyphs.add(
          new Glyph(
              word.text,
              word.left,
              word.right,
              word.base,
              word.size,
              SPACE * word.size,
              glyphs.size() + 1));
    }
    List<TextLine> lines = TextLine.of(glyphs);
    Set<String> cautions = new TreeSet<>();
    List<List<Cell>> cells = new LineCells(List.of(), cautions).of(lines);
    List<Row> rows = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      if (!cells.get(at).isEmpty()) {
        rows.add(new Row(rows.size() + 1, lines.get(at).base(), cells.get(at)));
      }
    }
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Page(number, "", rows));
  }
}
