package rickyard.intake;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.GridReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Unfolding;
import rickyard.intake.interpret.Interpreter;

/** Reads a file of the inbox, and whatever documents it holds, into reports. */
public final class Intake implements InboxReader {
  private final GridReader reader;
  private final Interpreter interpreter;
  private final ReadLimits limits;

  public Intake(GridReader reader, Interpreter interpreter, ReadLimits limits) {
    this.reader = requireNonNull(reader, "reader");
    this.interpreter = requireNonNull(interpreter, "interpreter");
    this.limits = requireNonNull(limits, "limits");
  }

  @Override
  public ReadFile read(byte[] bytes, String name) {
    return new ReadFile(
        Unfolding.of(reader, bytes, name, limits).stream().map(this::document).toList());
  }

  private ReadDocument document(Unfolding.Leaf leaf) {
    return leaf.opened()
        .fold(
            cells -> interpreted(leaf, cells.kind(), cells.grid()),
            parts -> document(leaf, parts.kind(), true, "", ""),
            bad -> document(leaf, bad.kind(), false, bad.code(), bad.reason()));
  }

  private static ReadDocument document(
      Unfolding.Leaf leaf, String kind, boolean container, String code, String reason) {
    return new ReadDocument(
        leaf.part(), leaf.sha256(), leaf.size(), kind, container, Optional.empty(), code, reason);
  }

  private ReadDocument interpreted(Unfolding.Leaf leaf, String kind, Grid grid) {
    return interpreter
        .interpret(grid, leaf.sha256())
        .fold(
            found ->
                new ReadDocument(
                    leaf.part(),
                    leaf.sha256(),
                    leaf.size(),
                    kind,
                    false,
                    Optional.of(found.report()),
                    "",
                    ""),
            none -> document(leaf, kind, false, none.code(), none.reason()));
  }
}
