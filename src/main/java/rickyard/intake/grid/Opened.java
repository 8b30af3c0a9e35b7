package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.function.Function;

/** What became of one document's bytes. */
public sealed interface Opened extends Serializable {

  /** The kind of document for outcomes.csv: csv, pdf, zip, mail, image, other … */
  String kind();

  /** One of three results for the three kinds of outcome. */
  <T> T fold(
      Function<Cells, T> onCells, Function<Parts, T> onParts, Function<Unreadable, T> onUnreadable);

  /** A document that holds text in cells. */
  record Cells(String kind, Grid grid) implements Opened {
    public Cells {
      requireNonNull(kind, "kind");
      requireNonNull(grid, "grid");
    }

    @Override
    public <T> T fold(
        Function<Cells, T> onCells,
        Function<Parts, T> onParts,
        Function<Unreadable, T> onUnreadable) {
      return onCells.apply(this);
    }
  }

  /** A container: each part is a document of its own. */
  record Parts(String kind, List<Part> parts) implements Opened {
    public Parts {
      requireNonNull(kind, "kind");
      parts = List.copyOf(parts);
    }

    @Override
    public <T> T fold(
        Function<Cells, T> onCells,
        Function<Parts, T> onParts,
        Function<Unreadable, T> onUnreadable) {
      return onParts.apply(this);
    }
  }

  /** A document that gives no cells; {@code code} is stable, {@code reason} a plain sentence. */
  record Unreadable(String kind, String code, String reason) implements Opened {
    public Unreadable {
      requireNonNull(kind, "kind");
      requireNonNull(code, "code");
      requireNonNull(reason, "reason");
    }

    @Override
    public <T> T fold(
        Function<Cells, T> onCells,
        Function<Parts, T> onParts,
        Function<Unreadable, T> onUnreadable) {
      return onUnreadable.apply(this);
    }
  }
}
