package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.intake.grid.Grid;

/**
 * Pages that are no reports, or that want to break the reader: a named outcome, in bounded time.
 */
class InterpreterHostileInputTest {
  private static final List<String> SCRAPS =
      List.of(
          "Starch",
          "DM",
          "% DM",
          "Dry matter",
          "As fed",
          "9.4",
          "<0.5",
          "NaN",
          "1e99",
          "-1",
          "Lot",
          "Lot: A",
          "NSC",
          "Sugar",
          "g/kg",
          "\u0661\u0662",
          "1.200",
          "1,200",
          "Analyte",
          "Typical",
          "0",
          "100",
          "ND",
          "=cmd()",
          "Sample",
          "WSC",
          "CP",
          "Moisture",
          "99999999999999999999",
          "Date: 99/99/9999",
          "Revision: 99999999999",
          "Cores: 999999",
          "(((((",
          "%%%%");

  @Test
  void anEmptyGridNamesNoAnalyte() {
    assertEquals("no-analytes", code(new Grid(Grid.Kind.TABLE, List.of(), List.of())));
  }

  @Test
  void aLetterNamesNoAnalyte() {
    assertEquals("no-analytes", code(Grids.table("Dear Sir\nPlease find enclosed our invoice 44")));
  }

  @Test
  void labelsWithoutFiguresAreSaidToBeSo() {
    assertEquals("no-values", code(Grids.table("Crude protein\nWSC")));
  }

  @Test
  void aNumberOfHundredsOfDigitsIsAQuestion() {
    assertEquals(
        "-: STARCH?number-ambiguous",
        Readings.words(Grids.table("Analyte|% DM\nStarch|" + "9".repeat(60))));
  }

  @Test
  void aHexNumberIsNoFigure() {
    assertEquals(
        "-: WSC=11 dm", Readings.words(Grids.table("Analyte|% DM\nStarch|0x1p3\nWSC|11.0")));
  }

  @Test
  void scrapsInAnyOrderNeverBreakTheReader() {
    for (int seed = 0; seed < 3000; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int row = 0; row < 8; row++) {
        for (int cell = random.nextInt(5); cell >= 0; cell--) {
          text.append(SCRAPS.get(random.nextInt(SCRAPS.size()))).append(cell > 0 ? "   " : "\n");
        }
      }
      String page = text.toString();
      Grid grid = seed % 2 == 0 ? Grids.pages(page) : Grids.table(page.replace("   ", "|"));
      Interpretation first = Readings.interpret(grid);
      assertEquals(first, Readings.interpret(grid), "seed " + seed);
    }
  }

  @Test
  void aLongPageTakesBoundedTime() {
    String row = "Starch|" + "a b c d e f g h ".repeat(200) + "|1.2\n";
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> assertFalse(code(Grids.table("Analyte|Note|% DM\n" + row.repeat(200))).isEmpty()));
  }

  private static String code(Grid grid) {
    return Readings.interpret(grid).fold(u -> "understood", Interpretation.NotUnderstood::code);
  }
}
