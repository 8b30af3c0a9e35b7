package rickyard.intake.isolate;

import rickyard.intake.InboxReader;
import rickyard.intake.grid.ReadingProgress;

/** Makes no reader at all: the machine is out of order, not a file. */
public final class BrokenReaderMaker implements ReaderMaker {
  @Override
  public InboxReader make(ChildSetup setup, ReadingProgress progress) {
    throw new IllegalStateException("out of order");
  }
}
