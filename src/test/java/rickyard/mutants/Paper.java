package rickyard.mutants;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/** The cells of a report as something that can be altered. */
final class Paper {
  /** A place of a cell: line and box from 0. */
  record Spot(int line, int box) {}

  /** A cell that may be blank. */
  record Box(String text, double left, double right, int column) {
    Box with(String other) {
      return new Box(other.strip(), left, right, column);
    }

    boolean isUnder(Box head) {
      return Math.min(right, head.right) > Math.max(left, head.left);
    }
  }

  /** A line of a page. */
  record Line(int page, int number, double top, List<Box> boxes) {}

  private final Grid grid;
  private final List<Line> lines;

  private Paper(Grid grid, List<Line> lines) {
    this.grid = grid;
    this.lines = lines;
  }

  static Paper of(Grid grid) {
    List<Line> lines = new ArrayList<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        List<Box> boxes = new ArrayList<>();
        row.cells().forEach(c -> boxes.add(new Box(c.text(), c.left(), c.right(), c.column())));
        lines.add(new Line(page.number(), row.number(), row.top(), boxes));
      }
    }
    return new Paper(grid, lines);
  }

  Paper copy() {
    return of(grid);
  }

  Grid.Kind kind() {
    return grid.kind();
  }

  List<Line> lines() {
    return lines;
  }

  Box box(Spot spot) {
    return lines.get(spot.line()).boxes().get(spot.box());
  }

  String text(Spot spot) {
    return box(spot).text();
  }

  void set(Spot spot, String text) {
    lines.get(spot.line()).boxes().set(spot.box(), box(spot).with(text));
  }

  void swap(Spot a, Spot b) {
    String text = text(a);
    set(a, text(b));
    set(b, text);
  }

  void removeLine(int line) {
    lines.remove(line);
  }

  /** Puts the same line once more below itself. */
  void repeat(int line) {
    Line same = lines.get(line);
    double below =
        line + 1 < lines.size() && lines.get(line + 1).page() == same.page()
            ? lines.get(line + 1).top()
            : same.top() + 2;
    lines.add(
        line + 1,
        new Line(
            same.page(), same.number(), (same.top() + below) / 2, new ArrayList<>(same.boxes())));
  }

  Grid toGrid() {
    SortedMap<Integer, List<Row>> pages = new TreeMap<>();
    for (Line line : lines) {
      List<Cell> cells =
          line.boxes().stream()
              .filter(b -> !b.text().isEmpty())
              .map(b -> new Cell(b.text(), b.left(), b.right(), b.column()))
              .toList();
      List<Row> rows = pages.computeIfAbsent(line.page(), p -> new ArrayList<>());
      if (!cells.isEmpty()) {
        rows.add(new Row(line.number(), line.top(), cells));
      }
    }
    return new Grid(
        grid.kind(),
        grid.pages().stream()
            .map(p -> new Page(p.number(), p.name(), pages.getOrDefault(p.number(), List.of())))
            .toList(),
        grid.cautions());
  }
}
