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
  private static final int LONGEST_SPLIT = 80;
  private final Dictionary dictionary;
  private static final int LONGEST_FIELDS = 200;
  private static final Pattern BETWEEN =
      Pattern.compile(
          "\\s+[\u00B7\u2022|]\\s+|\\s+[\u2013\u2014]\\s+|\\s+-\\s+(?=\\p{Lu})|;\\s+(?=\\p{L})");
  private final boolean certain;
  private final Memo<Boolean> whole;
  private final Memo<Boolean> undivided;
  private final Memo<Boolean> fields;
  private final Memo<Boolean> figures;
  private final PageHints hints;

  Lines(Dictionary dictionary, boolean certain, PageHints hints) {
    this.dictionary = dictionary;
    this.certain = certain;
    this.whole = new Memo<>(this::isWhole);
    this.undivided = new Memo<>(this::isUndivided);
    this.fields = new Memo<>(text -> FieldMark.read(dictionary, text).isPresent());
    this.figures = new Memo<>(this::isNumeral);
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
    Pieces pieces = new Pieces(reading);
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
      if (undivided.of(cell.text())) {
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
          behindField = fields.of(cell.text());
        }
      }
    }
    return Dialect.of(List.copyOf(distinct));
  }

  private void figures(Cell cell, Row row, Set<String> into) {
    if (undivided.of(cell.text())) {
      figure(cell.text(), into);
    } else {
      split(cell, row).forEach(c -> figure(c.text(), into));
    }
  }

  private void figure(String text, Set<String> into) {
    if (isFigure(text)) {
      into.add(text);
    }
  }

  /** Whether a cell with this text is one piece, whatever stands beside it. */
  private boolean isUndivided(String text) {
    return (text.length() > LONGEST_SPLIT || whole.of(text)) && !BETWEEN.matcher(text).find();
  }

  private boolean isFigure(String text) {
    return figures.of(text);
  }

  private boolean isNumeral(String text) {
    return Numerals.read(text, Dialect.OPEN, true)
        .filter(f -> dictionary.read(f.rest(), Dictionary.IN_MARK).unknown().isEmpty())
        .isPresent();
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
    Matcher mark = BETWEEN.matcher(text);
    if (text.length() > LONGEST_FIELDS
        || !mark.find()
        || FieldMark.read(dictionary, text.substring(0, mark.start())).isEmpty()) {
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
    if (text.length() > LONGEST_SPLIT || whole.of(text)) {
      return List.of(cell);
    }
    for (int at = 1; at < text.length(); at++) {
      if (isBorder(text.charAt(at))) {
        Optional<List<Cell>> parts = splitAt(cell, row, at);
        if (parts.isPresent()) {
          return parts.get();
        }
      }
    }
    return List.of(cell);
  }

  /** Whether a text is one label, or holds no place at which it could be divided. */
  private boolean isWhole(String text) {
    return !hasBorder(text) || Label.read(dictionary, text).isPresent();
  }

  private static boolean hasBorder(String text) {
    for (int at = 1; at < text.length(); at++) {
      if (isBorder(text.charAt(at))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBorder(char c) {
    return c == ' ' || c == ':' || c == '=';
  }

  private Optional<List<Cell>> splitAt(Cell cell, Row row, int at) {
    String head = cell.text().substring(0, at).strip();
    String tail = cell.text().substring(at).replaceFirst("^[\\s:=]+", "").strip();
    if (head.isEmpty()
        || tail.isEmpty()
        || Label.read(dictionary, head).isEmpty()
        || !isFigure(tail)) {
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
