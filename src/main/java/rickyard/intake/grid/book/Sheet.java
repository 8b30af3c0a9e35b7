package rickyard.intake.grid.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Cell.Nature;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/** One visible sheet while it is read. */
final class Sheet {
  /** Cells that are one: first row and column from 0, and how many of each. */
  record Merged(int row, int column, int rows, int columns) {}

  private record Entry(String text, Nature nature) {}

  private final SortedMap<Integer, SortedMap<Integer, Entry>> rows = new TreeMap<>();
  private final List<Merged> merged = new ArrayList<>();
  private final Book book;

  Sheet(Book book) {
    this.book = book;
  }

  /** Takes a cell; {@code row} and {@code column} from 0. Blank ones are not there. */
  void cell(int row, int column, String text, Nature nature) {
    String plain = book.checked(CellText.plain(text));
    if (plain.isEmpty()) {
      return;
    }
    book.count(1);
    Entry before =
        rows.computeIfAbsent(row, r -> new TreeMap<>()).put(column, new Entry(plain, nature));
    if (before != null) {
      throw Book.damaged();
    }
  }

  void cell(int row, int column, Shown shown) {
    cell(row, column, shown.text(), shown.nature());
  }

  void merged(Merged range) {
    book.count(1);
    merged.add(range);
  }

  /** The sheet as a page; empty if it shows nothing. */
  Optional<Page> page(int number, String name) {
    SortedMap<Integer, SortedMap<Integer, Integer>> widths = new TreeMap<>();
    merged.forEach(
        range -> {
          widths.computeIfAbsent(range.row, r -> new TreeMap<>()).put(range.column, range.columns);
          repeatDown(range);
        });
    List<Row> all = new ArrayList<>();
    rows.forEach(
        (row, entries) -> {
          List<Cell> cells = new ArrayList<>();
          entries.forEach(
              (column, entry) -> {
                int width = widths.getOrDefault(row, new TreeMap<>()).getOrDefault(column, 1);
                double right = 100.0 * (column + width - 1) + 99;
                cells.add(new Cell(entry.text, 100.0 * column, right, column + 1, entry.nature));
              });
          all.add(new Row(row + 1, row + 1, cells));
        });
    return all.isEmpty() ? Optional.empty() : Optional.of(new Page(number, name, all));
  }

  private static boolean isFigure(Entry entry) {
    return entry.nature != Nature.PRINTED || entry.text.matches("[<>0-9.,].*");
  }

  /** Words that reach down over rows of figures hold for each of them; a number stands once. */
  private void repeatDown(Merged range) {
    SortedMap<Integer, Entry> first = rows.get(range.row);
    Entry entry = first == null ? null : first.get(range.column);
    if (entry == null || entry.nature != Nature.PRINTED || range.rows < 2) {
      return;
    }
    List<Integer> below = List.copyOf(rows.subMap(range.row + 1, range.row + range.rows).keySet());
    for (int row : below) {
      book.count(1);
      SortedMap<Integer, Entry> entries = rows.get(row);
      if (entries != null && entries.values().stream().anyMatch(Sheet::isFigure)) {
        entries.putIfAbsent(range.column, entry);
      }
    }
  }
}
