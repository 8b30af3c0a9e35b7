package rickyard.intake.isolate;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ocr.Recogniser;
import rickyard.intake.interpret.Dictionary;

/**
 * What a child is told once, before its first file; the office's own words are in it, so the child
 * looks into no folder.
 *
 * @param dictionary what laboratories call things, with the office's changes
 * @param limits how much of a document is read
 * @param recognisers what reads pictures: the one that the parent found, or none; the child looks
 *     for no other
 */
public record ChildSetup(Dictionary dictionary, ReadLimits limits, List<Recogniser> recognisers)
    implements Serializable {
  public ChildSetup {
    requireNonNull(dictionary, "dictionary");
    requireNonNull(limits, "limits");
    recognisers = List.copyOf(recognisers);
    if (recognisers.size() > 1) {
      throw new IllegalArgumentException("one recogniser at most, was " + recognisers.size());
    }
  }

  /** A setup that reads no pictures. */
  public ChildSetup(Dictionary dictionary, ReadLimits limits) {
    this(dictionary, limits, List.of());
  }

  /** The same with what reads pictures. */
  public ChildSetup withRecogniser(Optional<Recogniser> recogniser) {
    return new ChildSetup(dictionary, limits, recogniser.stream().toList());
  }

  Optional<Recogniser> recogniser() {
    return recognisers.stream().findFirst();
  }
}
