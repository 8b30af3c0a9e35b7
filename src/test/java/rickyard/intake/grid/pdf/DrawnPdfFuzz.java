package rickyard.intake.grid.pdf;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.Set;
import rickyard.fuzz.Oracle;
import rickyard.intake.grid.Grid;

/**
 * PDFs drawn from the fuzzer's data. What can be seen never holds the digit 7; what is hidden holds
 * no other digit: so a 7 in a cell is text that nobody could see, and a number that was not drawn
 * in one piece is a number that nobody printed.
 */
class DrawnPdfFuzz {

  @FuzzTest(maxDuration = "30m")
  void anyDrawing(FuzzedDataProvider data) {
    RandomPdf drawing = new RandomPdf(data);
    byte[] pdf = drawing.pdf();
    Oracle.soon(() -> PdfOracle.read(pdf).ifPresent(grid -> check(grid, drawing.drawn())));
  }

  private static void check(Grid grid, Set<String> drawn) {
    grid.pages()
        .forEach(
            page ->
                page.rows().forEach(row -> row.cells().forEach(cell -> check(cell.text(), drawn))));
  }

  private static void check(String text, Set<String> drawn) {
    Oracle.require(text.indexOf('7') < 0, "read what nobody could see: " + text);
    RandomPdf.NUMBER
        .matcher(text)
        .results()
        .forEach(n -> Oracle.require(drawn.contains(n.group()), "nobody drew " + n.group()));
  }
}
