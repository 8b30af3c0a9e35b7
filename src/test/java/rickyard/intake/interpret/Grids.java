package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/**
 * Grids written by hand: tables with bars or tabs, pages as they look, two blanks between cells.
 */
final class Grids {
  private static final Pattern PIECE = Pattern.compile("\\S+(?: \\S+)*");
  private static final double CHARACTER = 6;

  private Grids() {}

  /** A table whose cells stand between bars; blank cells are left out. */
  static Grid table(String text) {
    return new Grid(Grid.Kind.TABLE, List.of(tablePage(1, text)), List.of());
  }

  private static Page tablePage(int number, String text) {
    List<Row> rows = new ArrayList<>();
    String[] lines = text.split("\n", -1);
    for (int r = 0; r < lines.length; r++) {
      List<Cell> cells = new ArrayList<>();
      String[] parts = lines[r].split("\\|", -1);
      for (int c = 0; c < parts.length; c++) {
        String cell = parts[c].strip();
        if (!cell.isEmpty()) {
          cells.add(new Cell(cell, 100.0 * c, 100.0 * c + 99, c + 1));
        }
      }
      if (!cells.isEmpty()) {
        rows.add(new Row(r + 1, r + 1, cells));
      }
    }
    return new Page(number, "", rows);
  }

  /** Pages as they look; six points a character, so that columns follow from positions. */
  static Grid pages(String... texts) {
    List<Page> pages = new ArrayList<>();
    for (String text : texts) {
      pages.add(placedPage(pages.size() + 1, text));
    }
    return new Grid(Grid.Kind.PLACED, pages, List.of());
  }

  private static Page placedPage(int number, String text) {
    List<Row> rows = new ArrayList<>();
    String[] lines = text.split("\n", -1);
    for (int r = 0; r < lines.length; r++) {
      List<Cell> cells = new ArrayList<>();
      Matcher match = PIECE.matcher(lines[r]);
      while (match.find()) {
        cells.add(
            new Cell(
                match.group(),
                match.start() * CHARACTER,
                match.end() * CHARACTER - 0.5,
                cells.size() + 1));
      }
      if (!cells.isEmpty()) {
        rows.add(new Row(r + 1, 12.0 * (r + 1), cells));
      }
    }
    return new Page(number, "", rows);
  }
}
