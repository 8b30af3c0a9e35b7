package rickyard.report.page;

import java.util.List;
import java.util.function.Function;
import rickyard.report.text.Shown;

/**
 * The part of a long list that the page shows: nobody reads thousands of entries, and a browser
 * cannot show them. The rest is counted and stands in a table of its own.
 *
 * @param shown in the order of the list
 * @param all how many there are
 * @param rest where the others are, as a sentence; empty where all are shown
 */
public record Listed<T>(List<T> shown, int all, String rest) {
  /** Entries of one list that the page shows. */
  static final int MOST = 300;

  public Listed {
    shown = List.copyOf(shown);
  }

  /** The first entries of a list. */
  static <S, T> Listed<T> first(List<S> all, Function<S, T> make, String file) {
    List<T> shown = all.stream().limit(MOST).map(make).toList();
    return of(shown, all.size(), file);
  }

  /** Chosen entries of a list. */
  static <T> Listed<T> of(List<T> shown, int all, String file) {
    int left = all - shown.size();
    String rest =
        left == 0 ? "" : Shown.count(left, "more stands in ", "more stand in ") + file + ".";
    return new Listed<>(shown, all, rest);
  }

  public boolean isEmpty() {
    return all == 0;
  }
}
