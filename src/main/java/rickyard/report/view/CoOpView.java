package rickyard.report.view;

import java.util.List;

/**
 * How a co-op's lots are shared out.
 *
 * @param shares who is to have what
 * @param shortages what is missing
 * @param retests which second test would free most
 * @param notes what could not be weighed
 */
public record CoOpView(
    List<ShareRow> shares,
    List<ShortageRow> shortages,
    List<RetestRow> retests,
    List<String> notes) {
  public CoOpView {
    shares = List.copyOf(shares);
    shortages = List.copyOf(shortages);
    retests = List.copyOf(retests);
    notes = List.copyOf(notes);
  }

  /** A morning that shared nothing out. */
  public static CoOpView none() {
    return new CoOpView(List.of(), List.of(), List.of(), List.of());
  }

  public boolean hasNothing() {
    return shares.isEmpty() && shortages.isEmpty() && retests.isEmpty();
  }
}
