package rickyard.report.view;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where the papers that were made with a page lie, relative to it.
 *
 * @param sheets by horse; empty where no sheets were made
 * @param letters by client, of those who get one; empty where no letters were made
 */
public record PaperLinks(SortedMap<String, String> sheets, SortedMap<String, String> letters) {
  public PaperLinks {
    sheets = Collections.unmodifiableSortedMap(new TreeMap<>(sheets));
    letters = Collections.unmodifiableSortedMap(new TreeMap<>(letters));
  }

  /** A page that was made alone. */
  public static PaperLinks none() {
    return new PaperLinks(Collections.emptySortedMap(), Collections.emptySortedMap());
  }
}
