package rickyard.ledger;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** Tells a machine that has run out of memory or disk from anything that is damaged. */
public final class Exhausted {
  private static final int DEPTH = 30;
  private static final int MIB = 1 << 20;

  private Exhausted() {}

  /** What ran out, as a sentence with the remedy; empty if nothing did. */
  public static Optional<String> sentence(Throwable failure) {
    Throwable at = failure;
    for (int i = 0; at != null && i < DEPTH; i++) {
      if (at instanceof OutOfMemoryError) {
        return Optional.of(
            "There is not enough memory for this morning (the program may use "
                + Runtime.getRuntime().maxMemory() / MIB
                + " MiB); start it with more, for example java -Xmx4g -jar rickyard.jar, or take"
                + " the largest file out of the inbox.");
      }
      if (isFull(at)) {
        return Optional.of(
            "The disk is full; make room and run the same command again: " + at.getMessage());
      }
      at = at.getCause();
    }
    return Optional.empty();
  }

  private static boolean isFull(Throwable failure) {
    String message = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
    return failure instanceof IOException
        && (message.contains("no space left on device") || message.contains("quota exceeded"));
  }
}
