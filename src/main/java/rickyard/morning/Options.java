package rickyard.morning;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Choices that change an output.
 *
 * @param units kg or lb
 * @param outputs which families of outputs: data, page …
 */
public record Options(String units, SortedSet<String> outputs) {
  public Options {
    outputs = Collections.unmodifiableSortedSet(new TreeSet<>(outputs));
  }

  /** The same choices always give the same text. */
  public String text() {
    return "units=" + units + " outputs=" + String.join(",", outputs);
  }
}
