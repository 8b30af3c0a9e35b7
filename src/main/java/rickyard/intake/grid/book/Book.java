package rickyard.intake.grid.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/** A workbook while it is read: its pages so far, and how much of the limits is used. */
final class Book {
  /** The kind's name in outcomes. */
  static final String KIND = "workbook";

  private final ReadLimits limits;
  private final List<Page> pages = new ArrayList<>();
  private final Set<String> cautions = new TreeSet<>();
  private int sheets;
  private int cells;

  Book(ReadLimits limits) {
    this.limits = limits;
  }

  ReadLimits limits() {
    return limits;
  }

  /** Something is left out because nobody sees it. */
  void hides() {
    cautions.add("hidden-text");
  }

  /** Begins a visible sheet. */
  Sheet sheet() {
    sheets++;
    if (sheets > limits.pages()) {
      throw new UnreadableException(
          "too-many-pages", "The workbook has more than " + limits.pages() + " sheets.");
    }
    return new Sheet(this);
  }

  /** Ends a visible sheet; sheets are counted as their tabs show them. */
  void add(Sheet sheet, String name) {
    sheet.page(sheets, name).ifPresent(pages::add);
  }

  void count(int more) {
    cells += more;
    if (cells > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The workbook has more than " + limits.cells() + " cells.");
    }
  }

  String checked(String text) {
    if (text.length() > limits.cellChars()) {
      throw new UnreadableException(
          "cell-too-long",
          "One cell holds more than " + limits.cellChars() + " characters; this is no report.");
    }
    return text;
  }

  Opened opened() {
    if (pages.isEmpty()) {
      throw new UnreadableException(
          "empty",
          cautions.isEmpty()
              ? "The workbook holds no cells; ask for it again."
              : "All that the workbook holds is hidden; ask for the report as it is printed.");
    }
    return new Opened.Cells(KIND, new Grid(Grid.Kind.TABLE, pages, List.copyOf(cautions)));
  }

  static UnreadableException damaged() {
    return new UnreadableException(
        "damaged", "The workbook is damaged and cannot be read; ask for it again.");
  }

  static UnreadableException encrypted() {
    return new UnreadableException(
        "encrypted",
        "The workbook asks for a password; save it without one or ask for another file.");
  }
}
