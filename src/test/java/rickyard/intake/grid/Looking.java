package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** Short ways to look at what came out of a reader. */
final class Looking {
  private Looking() {}

  static Opened open(byte[] bytes) {
    return new DocumentReader().open(bytes, "any.dat");
  }

  static Opened open(String text) {
    return open(text.getBytes(StandardCharsets.UTF_8));
  }

  static Grid grid(Opened opened) {
    return opened.fold(
        Opened.Cells::grid,
        parts -> fail("parts: " + parts.parts().size()),
        unreadable -> fail(unreadable.code() + ": " + unreadable.reason()));
  }

  static Grid grid(byte[] bytes) {
    return grid(open(bytes));
  }

  /** The sentence for a person where there are no cells. */
  static String reason(Opened opened) {
    return opened.fold(
        cells -> "cells: " + rows(cells.grid()),
        parts -> "parts: " + parts.parts().size(),
        Opened.Unreadable::reason);
  }

  static List<Part> parts(Opened opened) {
    return opened.fold(
        cells -> fail("cells: " + rows(cells.grid())),
        Opened.Parts::parts,
        unreadable -> fail(unreadable.code() + ": " + unreadable.reason()));
  }

  static String code(Opened opened) {
    return opened.fold(
        cells -> "cells: " + rows(cells.grid()),
        parts -> "parts: " + parts.parts().size(),
        Opened.Unreadable::code);
  }

  /** Rows of all pages: number, then cells as column=text. */
  static String rows(Grid grid) {
    return grid.pages().stream()
        .flatMap(page -> page.rows().stream())
        .map(Looking::row)
        .collect(Collectors.joining("\n"));
  }

  private static String row(Row row) {
    return row.cells().stream()
        .map(cell -> cell.column() + "=" + cell.text())
        .collect(Collectors.joining(" | ", row.number() + ": ", ""));
  }
}
