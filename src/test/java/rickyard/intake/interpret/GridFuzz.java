package rickyard.intake.interpret;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.List;
import rickyard.fuzz.Oracle;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/** Cells of the trade's own words in any arrangement: the interpreter reads on and invents none. */
class GridFuzz {
  private static final List<String> WORDS =
      List.of(
          "Dry matter",
          "Moisture",
          "Crude protein",
          "CP",
          "WSC",
          "ESC",
          "Starch",
          "NSC",
          "NFC",
          "Sugar",
          "ADF",
          "aNDF",
          "NDF",
          "Lignin",
          "Ash",
          "Fat",
          "Calcium",
          "Ca",
          "P",
          "Ca:P",
          "Mg",
          "K",
          "Na",
          "Fe",
          "Zn",
          "Cu",
          "Mn",
          "Se",
          "Nitrate",
          "DE",
          "Zucker gesamt",
          "Rohasche",
          "Matière sèche",
          "Amidon",
          "Fruktan",
          "As fed",
          "As received",
          "DM basis",
          "% DM",
          "%",
          "g/kg",
          "g/kg DM",
          "mg/kg",
          "ppm",
          "Mcal/lb",
          "Mcal/kg",
          "MJ/kg",
          "in der TM",
          "in der OS",
          "Analyte",
          "Result",
          "Results",
          "Unit",
          "Method",
          "Typical",
          "Limit",
          "Range",
          "Average",
          "Lot",
          "Lot: A-1",
          "Sample",
          "Sample: B",
          "Lab no.: 12",
          "Report no.: R-5",
          "Revision: 2",
          "Replaces: R-4",
          "Status: final",
          "PRELIMINARY",
          "Withdrawn",
          "Amended report",
          "Date: 2026-03-11",
          "Sampled: 3/4/2026",
          "Received: 31.12.2026",
          "Cores: 20",
          "NIR",
          "Wet chemistry",
          "ND",
          "trace",
          "n.d.",
          "-",
          "<0.5",
          "> 12",
          "~9",
          "9.2-9.6",
          "l0.4",
          "9.4*",
          "9.4 (a)",
          "1.200",
          "1,200",
          "12 345",
          "NSC = WSC + starch",
          "All results on a dry matter basis",
          "Results are expressed as fed",
          "* below the limit of quantification",
          "Page 1 of 2",
          "Notes",
          "Total",
          "10",
          "0",
          "100");

  @FuzzTest(maxDuration = "30m")
  void anyArrangement(FuzzedDataProvider data) {
    Grid grid = grid(data);
    Oracle.wellFormed(grid);
    Oracle.soon(() -> Oracle.read(grid));
  }

  private static Grid grid(FuzzedDataProvider data) {
    boolean table = data.consumeBoolean();
    List<String> cautions = data.consumeBoolean() ? List.of("hidden-text") : List.of();
    List<Page> pages = new ArrayList<>();
    int count = data.consumeInt(1, 3);
    for (int page = 1; page <= count; page++) {
      List<Row> rows = rows(data, table);
      if (!rows.isEmpty()) {
        pages.add(new Page(page, "", rows));
      }
    }
    return new Grid(table ? Grid.Kind.TABLE : Grid.Kind.PLACED, pages, cautions);
  }

  private static List<Row> rows(FuzzedDataProvider data, boolean table) {
    List<Row> rows = new ArrayList<>();
    int lines = data.consumeInt(1, 30);
    for (int line = 1; line <= lines && data.remainingBytes() > 0; line++) {
      List<Cell> cells = new ArrayList<>();
      int fields = data.consumeInt(1, 7);
      double left = 0;
      int column = 0;
      for (int field = 0; field < fields; field++) {
        int step = data.consumeInt(0, 2);
        String text = CellText.plain(text(data));
        column += 1 + step;
        left = table ? 100.0 * (column - 1) : left + data.consumeInt(0, 90);
        double width = table ? 99 : 1 + data.consumeInt(0, 120);
        if (!text.isEmpty()) {
          cells.add(new Cell(text, left, left + width, table ? column : cells.size() + 1));
        }
        left = table ? left : left + width;
      }
      if (!cells.isEmpty()) {
        rows.add(new Row(line, table ? line : 12.0 * line, cells));
      }
    }
    return rows;
  }

  private static String text(FuzzedDataProvider data) {
    return switch (data.consumeInt(0, 9)) {
      case 0 -> data.consumeString(12);
      case 1, 2, 3 -> data.consumeInt(0, 120) + "." + data.consumeInt(0, 99);
      case 4 -> data.consumeInt(0, 40) + "," + data.consumeInt(0, 999);
      case 5 -> WORDS.get(data.consumeInt(0, WORDS.size() - 1)) + " " + data.consumeAsciiString(8);
      default -> WORDS.get(data.consumeInt(0, WORDS.size() - 1));
    };
  }
}
