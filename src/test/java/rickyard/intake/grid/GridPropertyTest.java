package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables of chance, written in a way of chance, must come back cell by cell. */
class GridPropertyTest {
  private static final List<String> NAMES =
      List.of(
          "Crude protein",
          "ADF",
          "aNDF (ash-free)",
          "Rohasche",
          "Zucker gesamt",
          "Water soluble carbohydrates",
          "Ca",
          "Sélénium",
          "K, total",
          "Verhältnis Ca:P",
          "Matière sèche");
  private static final List<String> DIALECTS = List.of(",", ";", "\t", "|");

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  static IntStream fewerSeeds() {
    return IntStream.range(0, 120);
  }

  /** Rows of a head and figures; blanks as empty texts; the first column is never blank. */
  private static List<List<String>> table(Random random, boolean commas) {
    int columns = 2 + random.nextInt(5);
    int count = 3 + random.nextInt(15);
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("Analyte"));
    for (int column = 1; column < columns; column++) {
      head.add(List.of("As fed", "Dry matter", "Unit", "Method", "Lot " + column).get(column % 5));
    }
    rows.add(head);
    for (int row = 0; row < count; row++) {
      List<String> cells = new ArrayList<>(List.of(NAMES.get(random.nextInt(NAMES.size()))));
      for (int column = 1; column < columns; column++) {
        cells.add(random.nextInt(4) == 0 ? "" : figure(random, commas));
      }
      rows.add(cells);
    }
    return rows;
  }

  private static String figure(Random random, boolean comma) {
    String number = random.nextInt(100) + (comma ? "," : ".") + random.nextInt(100);
    return switch (random.nextInt(8)) {
      case 0 -> "<" + number;
      case 1 -> String.valueOf(random.nextInt(2000));
      case 2 -> "n.d.";
      default -> number;
    };
  }

  private static String written(List<List<String>> rows, String mark, Random random) {
    StringBuilder out = new StringBuilder();
    String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    boolean all = random.nextInt(4) == 0;
    for (List<String> row : rows) {
      List<String> fields = new ArrayList<>();
      for (String cell : row) {
        boolean quoted = all || cell.contains(mark) || random.nextInt(20) == 0;
        fields.add(quoted ? '"' + cell + '"' : cell);
      }
      out.append(String.join(mark, fields)).append(end);
    }
    return out.toString();
  }

  private static List<List<String>> back(Grid grid, int columns) {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : grid.pages().get(0).rows()) {
      List<String> cells = new ArrayList<>(Collections.nCopies(columns, ""));
      row.cells().forEach(cell -> cells.set(cell.column() - 1, cell.text()));
      rows.add(cells);
    }
    return rows;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aWrittenTableComesBack(int seed) {
    Random random = new Random(seed);
    boolean comma = random.nextBoolean();
    String mark = DIALECTS.get(random.nextInt(DIALECTS.size()));
    List<List<String>> rows = table(random, comma);
    String text = written(rows, mark, random);
    String charset =
        List.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252").get(random.nextInt(4));
    boolean marked = !charset.equals("windows-1252") && random.nextBoolean();
    byte[] bytes = ((marked ? "\uFEFF" : "") + text).getBytes(Charset.forName(charset));

    Grid grid = Looking.grid(Looking.open(bytes));

    assertEquals(
        rows, back(grid, rows.get(0).size()), "seed " + seed + " " + charset + "\n" + text);
    assertEquals(Grid.Kind.TABLE, grid.kind(), "seed " + seed);
  }

  /** One piece of text to be drawn. */
  private record Piece(double x, double y, String text, boolean toRight) {}

  @ParameterizedTest
  @MethodSource("fewerSeeds")
  void aDrawnTableComesBackWhateverTheOrderOfDrawing(int seed) throws IOException {
    Random random = new Random(seed);
    List<List<String>> rows = table(random, random.nextBoolean());
    try (Drawing drawing = new Drawing()) {
      drawing.font = random.nextBoolean() ? Drawing.SANS : Drawing.FIXED;
      drawing.size = 7 + random.nextInt(3);
      List<Piece> pieces = pieces(rows, drawing, random);
      Collections.shuffle(pieces, random);
      for (Piece piece : pieces) {
        if (piece.toRight()) {
          drawing.textTo(piece.x(), piece.y(), piece.text());
        } else {
          drawing.text(piece.x(), piece.y(), piece.text());
        }
      }
      Grid grid = Looking.grid(Looking.open(drawing.bytes()));
      assertEquals(List.of(), grid.cautions(), "seed " + seed);
      assertSame(rows, grid, seed);
    }
  }

  private static List<Piece> pieces(List<List<String>> rows, Drawing drawing, Random random) {
    int columns = rows.get(0).size();
    double pitch = drawing.size * (1.15 + random.nextDouble());
    double width = (550 - 170.0) / (columns - 1);
    List<Piece> pieces = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      boolean toRight = column > 0 && random.nextBoolean();
      double x = column == 0 ? 20 : 170 + width * (column - 1) + (toRight ? width - 8 : 0);
      for (int row = 0; row < rows.size(); row++) {
        String text = rows.get(row).get(column);
        if (!text.isEmpty()) {
          pieces.add(new Piece(x, 60 + pitch * row, text, toRight));
        }
      }
    }
    return pieces;
  }

  /** Every cell is there, and each value lies under the head of its own column and no other. */
  private static void assertSame(List<List<String>> rows, Grid grid, int seed) {
    List<Row> got = grid.pages().get(0).rows();
    assertEquals(rows.size(), got.size(), "seed " + seed + "\n" + Looking.rows(grid));
    List<Cell> heads = got.get(0).cells();
    for (int row = 0; row < rows.size(); row++) {
      List<String> expected = rows.get(row).stream().filter(t -> !t.isEmpty()).toList();
      List<Cell> cells = got.get(row).cells();
      assertEquals(expected, cells.stream().map(Cell::text).toList(), "seed " + seed);
      int at = 0;
      for (int column = 0; column < rows.get(row).size(); column++) {
        if (!rows.get(row).get(column).isEmpty()) {
          Cell cell = cells.get(at++);

          assertTrue(cell.overlap(heads.get(column)) > 0.3, "seed " + seed + " " + cell);
        }
      }
    }
  }
}
