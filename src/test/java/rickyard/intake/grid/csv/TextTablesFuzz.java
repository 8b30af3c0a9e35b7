package rickyard.intake.grid.csv;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.text.Normalizer;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import rickyard.fuzz.GoodReports;
import rickyard.fuzz.Oracle;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Row;
import rickyard.intake.grid.UnreadableException;

/** Any bytes as a text table: a refusal with a code, or cells that stand in the text. */
class TextTablesFuzz {

  static Stream<byte[]> seeds() {
    return Stream.concat(GoodReports.bytes(".csv"), GoodReports.bytes(".txt"));
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "\\x22",
    "\\x22\\x22",
    ";",
    "\\x09",
    "|",
    "\\x0D\\x0A",
    "sep=;\\x0A",
    "NSC",
    "WSC",
    "Starch",
    "ESC",
    "%",
    "DM",
    "As fed",
    "Dry matter",
    "Moisture",
    "9,4",
    "9.4",
    "<0.5",
    "NaN",
    "1e999",
    "0x1p3",
    "....",
    "  ",
    "Lot:",
    "Report no.",
    "\\xEF\\xBB\\xBF",
    "\\xE2\\x80\\x8B"
  })
  @FuzzTest(maxDuration = "30m")
  void anyBytes(byte[] bytes) {
    Oracle.soon(() -> check(bytes));
  }

  private static void check(byte[] bytes) {
    Opened opened;
    try {
      opened = TextTables.read(bytes, ReadLimits.DEFAULT);
    } catch (UnreadableException refused) {
      Oracle.require(!refused.code().isEmpty(), "refused without a code");
      return;
    }
    Grid grid = opened.fold(Opened.Cells::grid, parts -> none(), unreadable -> none());
    Oracle.wellFormed(grid);
    allStandInTheText(grid, Decoded.of(bytes).text());
    Oracle.read(grid);
  }

  private static Grid none() {
    throw new AssertionError("a text is cells or a refusal");
  }

  /** Each cell is a piece of the text, in order, nothing added, left out or joined within it. */
  private static void allStandInTheText(Grid grid, String text) {
    String all = squeezed(text);
    int from = 0;
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        for (Cell cell : row.cells()) {
          String piece = squeezed(cell.text());
          int at = all.indexOf(piece, from);
          Oracle.require(at >= 0, "not in the text, or out of order: " + cell);
          from = at + piece.length();
        }
      }
    }
  }

  private static String squeezed(String text) {
    StringBuilder seen = new StringBuilder();
    text.codePoints()
        .filter(p -> Character.getType(p) != Character.FORMAT || CellText.isTurning(p))
        .forEach(p -> seen.append(shown(p)));
    return Normalizer.normalize(seen, Normalizer.Form.NFD)
        .codePoints()
        .filter(p -> p != '"' && !Character.isWhitespace(p) && !Character.isSpaceChar(p))
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static String shown(int point) {
    String alone = Character.toString(point);
    if (point >= 0xFB00 && point <= 0xFB06) {
      return Normalizer.normalize(alone, Normalizer.Form.NFKC);
    }
    if (CellText.isTurning(point)) {
      return String.valueOf(CellText.UNKNOWN);
    }
    if (Character.isWhitespace(point)) {
      return " ";
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL, Character.PRIVATE_USE, Character.SURROGATE, Character.UNASSIGNED ->
          String.valueOf(CellText.UNKNOWN);
      default -> alone;
    };
  }
}
