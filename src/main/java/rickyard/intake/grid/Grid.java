package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/**
 * A document as cells with places.
 *
 * @param kind what it was
 * @param pages in order
 * @param cautions what the reader must know: stable codes such as {@code readings-differ} where two
 *     ways of reading the page disagree, {@code hidden-text} where text was left out because nobody
 *     could see it
 */
public record Grid(Kind kind, List<Page> pages, List<String> cautions) implements Serializable {

  /** How the cells were laid out. */
  public enum Kind {
    /** Columns are certain: delimited text, workbook, HTML table. */
    TABLE,
    /** Columns follow from positions on a page. */
    PLACED
  }

  public Grid {
    requireNonNull(kind, "kind");
    pages = List.copyOf(pages);
    cautions = List.copyOf(cautions);
  }
}
