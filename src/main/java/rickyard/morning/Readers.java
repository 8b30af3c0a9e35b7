package rickyard.morning;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ocr.Recogniser;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.isolate.ChildSetup;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.intake.isolate.ProcessLimits;
import rickyard.ledger.Originals;
import rickyard.ledger.Task;

/**
 * The readers of documents for one set of words.
 *
 * @param dictionary what laboratories call things
 */
record Readers(Dictionary dictionary) {

  /**
   * The reader of documents, in processes of its own; the caller closes it.
   *
   * @param most documents read at a time
   * @param progress told how far a long file is
   */
  IsolatedIntake intake(int most, Progress progress) {
    return new IsolatedIntake(
        new ChildSetup(dictionary, ReadLimits.DEFAULT).withRecogniser(recogniser()),
        ProcessLimits.DEFAULT,
        most,
        name -> new LongFile(name, progress));
  }

  /** What makes one reader another: cached readings of another reader are not used. */
  String digest() {
    String reader = Program.identity() + " " + dictionary.digest() + " " + ocr();
    return Originals.sha256(reader.getBytes(StandardCharsets.UTF_8));
  }

  private static String ocr() {
    return recogniser().map(Recogniser::identity).orElse("no ocr");
  }

  /** What a worker must be like to read for a morning. */
  Task task(int morning, LocalDate asOf) {
    return new Task(
        digest(), Program.identity(), dictionary.digest(), ocr(), morning, asOf.toString());
  }

  /** In what a run's reader is another than this; empty where it reads the same. */
  List<String> otherwise(Task task) {
    List<String> different = new ArrayList<>();
    if (!task.program().equals(Program.identity())) {
      different.add("its program (" + Program.version() + ") is not the run's");
    }
    if (!task.tables().equals(dictionary.digest())) {
      different.add(
          "its tables of words are not the run's (name the office, or its config with --config)");
    }
    if (!task.ocr().equals(ocr())) {
      different.add("it reads pictures with another program, or with none");
    }
    return different;
  }

  /** The machine's text recogniser, looked up once for all mornings of this process. */
  private static Optional<Recogniser> recogniser() {
    return Machine.RECOGNISER;
  }

  private static final class Machine {
    static final Optional<Recogniser> RECOGNISER = Recogniser.find();
  }
}
