package rickyard.report.view;

import java.util.List;

/**
 * How a co-op's lots are shared out.
 *
 * @param shares who is to have what
 * @param shortages what is missing
 */
public record CoOpView(List<ShareRow> shares, List<ShortageRow> shortages) {
  public CoOpView {
    shares = List.copyOf(shares);
    shortages = List.copyOf(shortages);
  }

  /** A morning that shared nothing out. */
  public static CoOpView none() {
    return new CoOpView(List.of(), List.of());
  }
}
