package rickyard.intake.grid.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Row;
import rickyard.intake.grid.UnreadableException;

/** Reads delimited text as a table and other text as a listing with columns by position. */
public final class TextTables {
  /** Texts of one column that are kept in mind. */
  private static final int MOST_KNOWN = 5_000;

  private final ReadLimits limits;
  private final Set<String> cautions = new TreeSet<>();
  private int cells;

  private TextTables(ReadLimits limits) {
    this.limits = limits;
  }

  /**
   * Reads a text.
   *
   * @return cells, with cautions {@code encoding-guessed}, {@code quotes-unbalanced}, {@code
   *     readings-differ} (decimal commas without quotes may have been divided, or a row is not as
   *     wide as its head), {@code control-characters} or {@code hidden-text} where they apply
   * @throws UnreadableException where the bytes hold no text or more than the limits
   */
  public static Opened read(byte[] bytes, ReadLimits limits) {
    return new TextTables(limits).read(Decoded.of(bytes));
  }

  private Opened read(Decoded decoded) {
    String text = decoded.text();
    String bare = text.strip();
    if (bare.startsWith("{") && bare.endsWith("}") && bare.contains(":")) {
      throw new UnreadableException(
          "unsupported-kind",
          "This kind of file is not read; ask for the report as CSV or as PDF with text.");
    }
    if (text.isBlank()) {
      throw new UnreadableException("empty", "The file holds only blanks; ask for it again.");
    }
    caution(decoded);
    List<String> lines = text.lines().toList();
    boolean told = lines.get(0).strip().matches("(?i)\"?sep=.\"?");
    Layout layout = told ? told(lines.get(0)) : Layout.of(lines);
    Grid grid = layout == Layout.LISTING ? listing(text) : table(text, lines, layout, told);
    if (grid.pages().isEmpty()) {
      throw new UnreadableException("empty", "The file holds no cells; ask for it again.");
    }
    return new Opened.Cells(layout == Layout.LISTING ? "text" : "csv", grid);
  }

  /** A first line that names the delimiter, as spreadsheet programs understand it. */
  private static Layout told(String line) {
    char mark = line.replace("\"", "").strip().charAt(4);
    for (Layout each : Layout.values()) {
      if (each != Layout.LISTING && each.mark() == mark) {
        return each;
      }
    }
    throw new UnreadableException(
        "unknown-delimiter",
        "The table is divided by \"" + mark + "\"; save it with comma, semicolon or tab.");
  }

  private void caution(Decoded decoded) {
    if (decoded.guessed()) {
      cautions.add("encoding-guessed");
    }
    decoded
        .text()
        .codePoints()
        .forEach(
            point -> {
              if (CellText.isTurning(point)) {
                cautions.add("hidden-text");
              } else if (point == CellText.UNKNOWN
                  || (Character.isISOControl(point) && !Character.isWhitespace(point))) {
                cautions.add("control-characters");
              }
            });
  }

  private Grid table(String text, List<String> lines, Layout layout, boolean told) {
    Records records = Records.of(text, lines, layout, limits);
    if (records.doubtful()) {
      cautions.add("quotes-unbalanced");
    }
    if (RaggedRows.found(records.fields())
        || (layout == Layout.COMMA && DecimalCommas.suspected(records.fields()))) {
      cautions.add("readings-differ");
    }
    List<Row> rows = new ArrayList<>();
    List<Cells> columns = new ArrayList<>();
    // The line that names the delimiter is counted but is no data.
    for (int record = told ? 1 : 0; record < records.fields().size(); record++) {
      List<String> fields = records.fields().get(record);
      List<Cell> row = new ArrayList<>(fields.size());
      for (int column = 0; column < fields.size(); column++) {
        if (column == columns.size()) {
          columns.add(new Cells(column));
        }
        columns.get(column).find(fields.get(column)).ifPresent(row::add);
      }
      boolean ruled = row.stream().allMatch(cell -> Layout.RULED.matcher(cell.text()).matches());
      add(rows, record + 1, ruled ? List.of() : row);
    }
    return grid(Grid.Kind.TABLE, rows.isEmpty() ? List.of() : List.of(new Page(1, "", rows)));
  }

  /** The cells of one column: what stands in it twice is one cell in two rows. */
  private final class Cells {
    private final int column;
    private final Map<String, Optional<Cell>> known = new HashMap<>();

    private Cells(int column) {
      this.column = column;
    }

    private Optional<Cell> find(String field) {
      Optional<Cell> cell = known.get(field);
      if (cell == null) {
        cell = make(field);
        if (known.size() >= MOST_KNOWN) {
          known.clear();
        }
        known.put(field, cell);
      }
      return cell;
    }

    private Optional<Cell> make(String field) {
      String text = checked(CellText.plain(field));
      double left = 100.0 * column;
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(new Cell(text, left, left + 99, column + 1));
    }
  }

  private Grid listing(String text) {
    List<Page> pages = new ArrayList<>();
    int number = 0;
    for (String sheet : text.split("\f", -1)) {
      number++;
      List<Row> rows = new ArrayList<>();
      int line = 0;
      for (String each : sheet.lines().toList()) {
        line++;
        List<Cell> row = new ArrayList<>();
        for (Listing.Piece piece : Listing.pieces(each)) {
          count(1);
          row.add(new Cell(checked(piece.text()), piece.from(), piece.to(), row.size() + 1));
        }
        add(rows, line, Layout.RULED.matcher(each).matches() ? List.of() : row);
      }
      if (!rows.isEmpty()) {
        pages.add(new Page(number, "", rows));
      }
    }
    return grid(Grid.Kind.PLACED, pages);
  }

  private Grid grid(Grid.Kind kind, List<Page> pages) {
    return new Grid(kind, pages, List.copyOf(cautions));
  }

  private static void add(List<Row> rows, int number, List<Cell> cells) {
    if (!cells.isEmpty()) {
      rows.add(new Row(number, number, cells));
    }
  }

  private void count(int more) {
    cells += more;
    if (cells > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The text has more than " + limits.cells() + " cells.");
    }
  }

  private String checked(String text) {
    if (text.length() > limits.cellChars()) {
      throw new UnreadableException(
          "cell-too-long",
          "One cell holds more than " + limits.cellChars() + " characters; this is no report.");
    }
    return text;
  }
}
