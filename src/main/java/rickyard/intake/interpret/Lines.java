package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/** The rows of a grid with their cells understood one by one; 'Starch: 1.2 %' becomes two cells. */
final class Lines {
  private static final int LONGEST_FIELDS = 200;
  private static final Pattern HEAD = Pattern.compile("^[\\s:=]+");

  private final CellTexts texts;
  private final Dictionary dictionary;
  private final boolean certain;
  private final PageHints hints;

  Lines(CellTexts texts, boolean certain, PageHints hints) {
    this.texts = texts;
    this.dictionary = texts.dictionary();
    this.certain = certain;
    this.hints = hints;
  }

  List<Line> of(Grid grid) {
    Dialect dialect = hints.dialect(dialect(grid));
    Piece.Reading reading =
        new Piece.Reading(
            dictionary,
            dialect,
            Legend.of(dictionary, grid),
            ColumnKey.of(dictionary, grid),
            certain);
    Pieces pieces = new Pieces(reading, texts);
    List<Line> lines = new ArrayList<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        lines.add(line(page.number(), row, pieces));
      }
    }
    return new LabelsLast(certain).turned(new Wraps(reading).joined(lines));
  }

  private Line line(int page, Row row, Pieces known) {
    List<Piece> pieces = new ArrayList<>();
    for (Cell cell : row.cells()) {
      if (texts.isUndivided(cell.text())) {
        pieces.add(known.of(cell));
      } else {
        split(cell, row).forEach(part -> pieces.add(known.of(part)));
      }
    }
    return new Line(page, row.number(), pieces);
  }

  /** The document's decimal mark; numbers that stand behind a field of the head do not count. */
  private Dialect dialect(Grid grid) {
    Set<String> distinct = new HashSet<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        boolean behindField = false;
        for (Cell cell : row.cells()) {
          // A number stored as a number tells nothing of how the text writes its own.
          if (!behindField && cell.nature() == Cell.Nature.PRINTED) {
            figures(cell, row, distinct);
          }
          behindField = texts.field(cell.text()).isPresent();
        }
      }
    }
    return Dialect.of(List.copyOf(distinct));
  }

  private void figures(Cell cell, Row row, Set<String> into) {
    if (texts.isUndivided(cell.text())) {
      figure(cell.text(), into);
    } else {
      split(cell, row).forEach(c -> figure(c.text(), into));
    }
  }

  private void figure(String text, Set<String> into) {
    if (texts.isFigure(text)) {
      into.add(text);
    }
  }

  private List<Cell> split(Cell cell, Row row) {
    List<Cell> fields = fields(cell);
    if (fields.size() > 1) {
      return fields;
    }
    return figure(cell, row);
  }

  /** 'Report 77 · Sampled 3 May 2026': fields in a row with a mark between them. */
  private List<Cell> fields(Cell cell) {
    String text = cell.text();
    Matcher mark = CellTexts.between().matcher(text);
    if (text.length() > LONGEST_FIELDS
        || !mark.find()
        || texts.field(text.substring(0, mark.start())).isEmpty()) {
      return List.of(cell);
    }
    List<Cell> parts = new ArrayList<>();
    int from = 0;
    mark.reset();
    while (mark.find()) {
      parts.add(part(cell, from, mark.start()));
      from = mark.end();
    }
    parts.add(part(cell, from, text.length()));
    return parts.stream().anyMatch(p -> p.text().isBlank()) ? List.of(cell) : parts;
  }

  private static Cell part(Cell cell, int from, int to) {
    double perChar = (cell.right() - cell.left()) / Math.max(1, cell.text().length());
    return new Cell(
        cell.text().substring(from, to).strip(),
        cell.left() + from * perChar,
        cell.left() + to * perChar,
        cell.column(),
        cell.nature());
  }

  private List<Cell> figure(Cell cell, Row row) {
    String text = cell.text();
    if (texts.isWhole(text)) {
      return List.of(cell);
    }
    for (int at = 1; at < text.length(); at++) {
      if (CellTexts.isBorder(text.charAt(at))) {
        Optional<List<Cell>> parts = splitAt(cell, row, at);
        if (parts.isPresent()) {
          return parts.get();
        }
      }
    }
    return List.of(cell);
  }

  private Optional<List<Cell>> splitAt(Cell cell, Row row, int at) {
    String head = cell.text().substring(0, at).strip();
    String tail = HEAD.matcher(cell.text().substring(at)).replaceFirst("").strip();
    if (head.isEmpty() || tail.isEmpty() || texts.label(head).isEmpty() || !texts.isFigure(tail)) {
      return Optional.empty();
    }
    double border = cell.left() + (cell.right() - cell.left()) * at / cell.text().length();
    boolean free = row.cells().stream().noneMatch(c -> c.column() == cell.column() + 1);
    return Optional.of(
        List.of(
            new Cell(head, cell.left(), border, cell.column()),
            new Cell(tail, border, cell.right(), cell.column() + (free ? 1 : 0), cell.nature())));
  }
}
