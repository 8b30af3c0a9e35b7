package rickyard.intake.isolate;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Dictionary;

/**
 * What a child is told once, before its first file; the office's own words are in it, so the child
 * looks into no folder.
 *
 * @param dictionary what laboratories call things, with the office's changes
 * @param limits how much of a document is read
 */
public record ChildSetup(Dictionary dictionary, ReadLimits limits) implements Serializable {
  public ChildSetup {
    requireNonNull(dictionary, "dictionary");
    requireNonNull(limits, "limits");
  }
}
