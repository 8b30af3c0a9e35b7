package rickyard.intake.isolate;

import java.util.ServiceLoader;
import rickyard.intake.InboxReader;
import rickyard.intake.Intake;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.interpret.Interpreter;

/**
 * Makes the reader that runs inside the child. Another one on the class path takes the place of the
 * usual one: that is how tests put a reader there that hangs, bursts or ends.
 */
public interface ReaderMaker {

  /**
   * A reader for the tables and limits that the parent sent.
   *
   * @param progress to be told how far a long file is
   */
  InboxReader make(ChildSetup setup, ReadingProgress progress);

  /** The one on the class path, else the program's own. */
  static ReaderMaker find() {
    return ServiceLoader.load(ReaderMaker.class).findFirst().orElse(ReaderMaker::usual);
  }

  /** The program's own reader. */
  static InboxReader usual(ChildSetup setup, ReadingProgress progress) {
    return new Intake(
        new DocumentReader(setup.limits(), setup.recogniser(), progress),
        new Interpreter(setup.dictionary(), progress),
        setup.limits());
  }
}
