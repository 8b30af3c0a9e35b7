package rickyard.morning;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.report.view.PaperSize;

/**
 * Choices that change an output.
 *
 * @param units kg or lb
 * @param outputs which families of outputs: data, page, sheets …
 * @param paper what is printed on
 */
public record Options(String units, SortedSet<String> outputs, PaperSize paper) {
  public Options {
    outputs = Collections.unmodifiableSortedSet(new TreeSet<>(outputs));
  }

  /** The same on A4. */
  public Options(String units, SortedSet<String> outputs) {
    this(units, outputs, PaperSize.A4);
  }

  /** The same choices always give the same text. */
  public String text() {
    String text = "units=" + units + " outputs=" + String.join(",", outputs);
    return paper == PaperSize.A4 ? text : text + " paper=" + paper.code();
  }
}
